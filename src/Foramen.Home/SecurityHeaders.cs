using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using Microsoft.Extensions.FileProviders;

namespace Foramen.Home;

/// <summary>
/// Tells the browser to load nothing from anywhere else. Scripts come from files; the one inline script, the import map that the build writes
/// into index.html, is allowed by its hash. WebAssembly needs 'wasm-unsafe-eval'; nothing else is evaluated.
/// </summary>
internal sealed partial class SecurityHeaders(RequestDelegate next, IWebHostEnvironment environment)
{
    private readonly string policy = Policy(environment.WebRootFileProvider.GetFileInfo("index.html"));

    public Task InvokeAsync(HttpContext context)
    {
        var headers = context.Response.Headers;
        headers.ContentSecurityPolicy = policy;
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers["Permissions-Policy"] = "camera=(self), accelerometer=(self), gyroscope=(self), screen-wake-lock=(self), geolocation=(self), microphone=(), payment=(), usb=()";
        return next(context);
    }

    private static string Policy(IFileInfo index)
    {
        var hashes = new StringBuilder();
        if (index.Exists)
        {
            using var reader = new StreamReader(index.CreateReadStream());
            foreach (Match script in InlineScript().Matches(reader.ReadToEnd()))
            {
                var digest = Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(script.Groups["body"].Value)));
                hashes.Append(" 'sha256-").Append(digest).Append('\'');
            }
        }

        return "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'" + hashes
            + "; style-src 'self'; img-src 'self' blob: data:; font-src 'self'; connect-src 'self'; manifest-src 'self'; worker-src 'self'"
            + "; base-uri 'self'; form-action 'none'; frame-ancestors 'none'";
    }

    [GeneratedRegex("""<script(?![^>]*\bsrc=)[^>]*>(?<body>.*?)</script>""", RegexOptions.Singleline | RegexOptions.IgnoreCase)]
    private static partial Regex InlineScript();
}
