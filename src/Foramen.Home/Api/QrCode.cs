using System.Net.NetworkInformation;
using System.Net.Sockets;
using Foramen.Home.Operations;
using Microsoft.AspNetCore.Http.Extensions;
using QRCoder;

namespace Foramen.Home.Api;

/// <summary>A code as it is shown at home: to type, as an address to open, and as a square to scan.</summary>
internal static class QrCode
{
    /// <param name="context">The request, by whose name this Home was reached.</param>
    /// <param name="options">Where it is said how others reach it.</param>
    /// <param name="page">The app's page for it.</param>
    /// <param name="mark">What the app shall do with the code: pair or join.</param>
    /// <param name="code">The code.</param>
    /// <param name="until">Until when it is good.</param>
    public static CodeBody Of(HttpContext context, HomeOptions options, string page, string mark, string code, DateTimeOffset until)
    {
        // The code stands behind the number sign, which browsers do not send: it reaches no log on the way.
        var address = $"{options.Address?.ToString() ?? UriHelper.BuildAbsolute(context.Request.Scheme, HostFor(context.Request.Host))}{page}#{mark}={code}";
        using var generator = new QRCodeGenerator();
        using var data = generator.CreateQrCode(address, QRCodeGenerator.ECCLevel.M);
        using var svg = new SvgQRCode(data);
        return new CodeBody(code, until, address, svg.GetGraphic(6));
    }

    // Whoever sits at home has opened it by a name that leads nowhere from a phone.
    private static HostString HostFor(HostString asked)
    {
        if (asked.Host is not ("localhost" or "127.0.0.1" or "[::1]"))
        {
            return asked;
        }

        var own = NetworkInterface.GetAllNetworkInterfaces().Where(one => one.OperationalStatus == OperationalStatus.Up && one.NetworkInterfaceType != NetworkInterfaceType.Loopback)
            .SelectMany(one => one.GetIPProperties().UnicastAddresses).Select(one => one.Address)
            .FirstOrDefault(address => address.AddressFamily == AddressFamily.InterNetwork);
        return own is null ? asked : asked.Port is { } port ? new HostString(own.ToString(), port) : new HostString(own.ToString());
    }
}
