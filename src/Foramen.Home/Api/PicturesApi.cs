using System.Globalization;
using Foramen.Engine.Quantities;
using Foramen.Home.Refusals;
using Foramen.Journal;
using Foramen.Storage.Pictures;

namespace Foramen.Home.Api;

/// <summary>Photographs and scans by their hash: asked for, sent in pieces, gone on with after a cut, given in ranges.</summary>
internal static class PicturesApi
{
    private const int MaxAsked = 5_000;
    private const string MediaType = "application/octet-stream";

    public static void MapTo(IEndpointRouteBuilder routes, PictureStore pictures)
    {
        routes.MapPost("/api/pictures/missing", (HttpContext context) => Refusal.GuardAsync(context, () => MissingAsync(context, pictures)));
        routes.MapPut("/api/pictures/{hash}", (HttpContext context, string hash) => Refusal.GuardAsync(context, () => PutAsync(context, pictures, hash)));
        routes.MapGet("/api/pictures/{hash}/progress", (HttpContext context, string hash) => Refusal.GuardAsync(context, () => Answer(context, pictures.ProgressOf(hash))));
        routes.MapGet("/api/pictures/{hash}", (HttpContext context, string hash) => Get(context, pictures, hash));
    }

    private static async Task MissingAsync(HttpContext context, PictureStore pictures)
    {
        var asked = (await Body.ReadJsonAsync(context, 80 * MaxAsked, HomeJson.Default.HashesBody)).Hashes ?? [];
        if (asked.Count > MaxAsked || asked.Any(hash => !ContentHash.Is(hash)))
        {
            throw new RefusalException($"At most {MaxAsked} hashes of 64 lower-case hexadecimal digits may be asked for.");
        }

        await context.Response.WriteAsJsonAsync(new HashesBody([.. asked.Where(hash => pictures.Find(hash) is null)]), HomeJson.Default.HashesBody, cancellationToken: context.RequestAborted);
    }

    private static async Task PutAsync(HttpContext context, PictureStore pictures, string hash)
    {
        Body.CheckKind(context, MediaType);
        var (offset, total) = (Number(context, "offset"), Number(context, "total"));
        context.Features.Get<Microsoft.AspNetCore.Http.Features.IHttpMaxRequestBodySizeFeature>()!.MaxRequestBodySize = PictureStore.MaxBytes;
        await Answer(context, await pictures.AppendAsync(hash, total, offset, context.Request.Body, context.RequestAborted));
    }

    private static Task Answer(HttpContext context, PictureProgress progress)
        => context.Response.WriteAsJsonAsync(new ProgressBody(progress.Offset, progress.Complete), HomeJson.Default.ProgressBody, cancellationToken: context.RequestAborted);

    private static IResult Get(HttpContext context, PictureStore pictures, string hash)
    {
        if (pictures.Find(hash) is not { } file)
        {
            return Results.NotFound();
        }

        var head = new byte[PictureKind.BytesNeeded];
        using (var stream = File.OpenRead(file))
        {
            stream.ReadAtLeast(head, head.Length, throwOnEndOfStream: false);
        }

        context.Response.Headers.ContentSecurityPolicy = "default-src 'none'; sandbox";
        context.Response.Headers.ContentDisposition = "attachment";
        return Results.File(file, PictureKind.MediaTypeOf(head) ?? MediaType, enableRangeProcessing: true);
    }

    private static long Number(HttpContext context, string name)
        => long.TryParse(context.Request.Query[name], NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            ? number
            : throw new RefusalException($"The address should say “{name}” as a whole number of bytes.");
}
