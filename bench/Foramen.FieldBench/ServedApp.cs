using System.Net;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.StaticFiles;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace Foramen.FieldBench;

/// <summary>A published app, served alike for all: the brotli file beside a file where there is one, else the file.</summary>
internal sealed record ServedApp(string Name, string Address)
{
    public static async Task<ServedApp> StartAsync(string name, string directory)
    {
        var root = Path.GetFullPath(directory);
        var types = new FileExtensionContentTypeProvider();
        types.Mappings[".dat"] = "application/octet-stream";
        var builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.ConfigureKestrel(kestrel => kestrel.Listen(IPAddress.Loopback, 0));
        var app = builder.Build();
        app.Run(async context =>
        {
            var relative = context.Request.Path.Value!.TrimStart('/');
            var file = Path.Combine(root, relative.Length == 0 ? "index.html" : relative);
            if (!File.Exists(file))
            {
                file = Path.Combine(root, "index.html");
            }

            context.Response.ContentType = types.TryGetContentType(file, out var type) ? type : "application/octet-stream";
            if (File.Exists(file + ".br"))
            {
                context.Response.Headers.ContentEncoding = "br";
                file += ".br";
            }

            await context.Response.SendFileAsync(file);
        });
        await app.StartAsync();
        return new ServedApp(name, app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First());
    }
}
