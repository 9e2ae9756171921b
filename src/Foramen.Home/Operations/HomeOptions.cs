using System.Net;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using Foramen.Engine.Quantities;
using Foramen.Storage;

namespace Foramen.Home.Operations;

/// <summary>How Home is started; every wrong wish is refused in one sentence before anything is opened.</summary>
internal sealed record HomeOptions
{
    private const int UsualPort = 5270;
    private const string NoJournal = "none";

    public required int Port { get; init; }

    /// <summary>Addresses of this machine only, unless another was asked for.</summary>
    public required IPAddress Listen { get; init; }

    public X509Certificate2? Certificate { get; init; }

    public string? Demo { get; init; }

    /// <summary>Where journal and pictures lie; null where none are kept.</summary>
    public string? Data { get; init; }

    public string? Postgres { get; init; }

    /// <summary>How other devices reach Home, where it is said.</summary>
    public Uri? Address { get; init; }

    public bool JsonLog { get; init; }

    public bool LoopbackOnly => IPAddress.IsLoopback(Listen);

    /// <summary>Whether other devices reach it: by an address of its own, or by a proxy on this machine, where --address says so.</summary>
    public bool ServesOthers => !LoopbackOnly || Address is not null;

    public bool KeepsJournal => Data is not null;

    /// <summary>Reads what was said on the command line or in the environment.</summary>
    /// <exception cref="RefusalException">Something cannot be.</exception>
    public static HomeOptions Read(IConfiguration configuration)
    {
        var port = configuration["port"] is { } text
            ? int.TryParse(text, out var number) && number is >= 0 and <= 65535
                ? number
                : throw new RefusalException($"The port is {text}; it should be between 0 (any free one) and 65535.")
            : UsualPort;
        var demo = configuration["demo"];
        if (demo is not null && !File.Exists(demo))
        {
            throw new RefusalException($"There is no journal file {demo}; name the demo outing's file, or leave --demo out.");
        }

        var listen = configuration["listen"] is { } said
            ? IPAddress.TryParse(said, out var address) ? address : throw new RefusalException($"“{said}” is no address; write one like 192.168.1.20, or 0.0.0.0 for all of this machine's.")
            : IPAddress.Loopback;
        var certificate = configuration["certificate"] is { } file ? ReadCertificate(file, configuration["certificate-key"], configuration["certificate-password-file"]) : null;
        var data = configuration["data"] ?? Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.Create), "foramen");
        if (!IPAddress.IsLoopback(listen) && certificate is null)
        {
            throw new RefusalException($"Others could listen to what goes to {listen}; give a certificate with --certificate, or leave --listen out to serve this machine only.");
        }

        var reached = configuration["address"] is { } name
            ? Uri.TryCreate(name, UriKind.Absolute, out var uri) && uri.Scheme == Uri.UriSchemeHttps ? uri : throw new RefusalException($"“{name}” is no address that phones can open; write one like https://home.example:{UsualPort}/.")
            : null;
        var log = configuration["log"] ?? "plain";
        return log is not ("plain" or "json")
            ? throw new RefusalException($"The log is “{log}”; it should be plain or json.")
            : new HomeOptions
            {
                Port = port, Listen = listen, Certificate = certificate, Demo = demo, Data = data == NoJournal ? null : data, JsonLog = log == "json", Address = reached,
                // The environment is the better place for a password: a command line is seen by every user of the machine.
                Postgres = configuration["postgres"] ?? Environment.GetEnvironmentVariable("FORAMEN_POSTGRES"),
            };
    }

    /// <summary>Where the journal lies.</summary>
    public StoreSettings Store() => Postgres is { Length: > 0 } connection ? StoreSettings.Postgres(connection) : StoreSettings.Sqlite(Path.Combine(Data!, "journal.sqlite"));

    private static X509Certificate2 ReadCertificate(string file, string? key, string? passwordFile)
    {
        if (!File.Exists(file))
        {
            throw new RefusalException($"There is no certificate {file}; name a .pfx file, or a .pem file and its key with --certificate-key.");
        }

        try
        {
            var password = passwordFile is null ? null : File.ReadAllText(passwordFile).TrimEnd('\r', '\n');
            if (key is null)
            {
                return X509CertificateLoader.LoadPkcs12FromFile(file, password);
            }

            using var pem = password is null ? X509Certificate2.CreateFromPemFile(file, key) : X509Certificate2.CreateFromEncryptedPemFile(file, password, key);
            return X509CertificateLoader.LoadPkcs12(pem.Export(X509ContentType.Pkcs12), null);
        }
        catch (Exception e) when (e is CryptographicException or IOException or ArgumentException)
        {
            throw new RefusalException($"The certificate {file} cannot be read; it should be a .pfx file, or a .pem file and its key with --certificate-key.", e);
        }
    }
}
