using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Foramen.Engine.Quantities;

namespace Foramen.Home.Api;

/// <summary>Reads what was sent, never more than is allowed and never unpacked: a small body cannot grow.</summary>
internal static class Body
{
    public static async Task<byte[]> ReadAsync(HttpContext context, int maxBytes, string mediaType)
    {
        CheckKind(context, mediaType);
        context.Features.Get<Microsoft.AspNetCore.Http.Features.IHttpMaxRequestBodySizeFeature>()!.MaxRequestBodySize = maxBytes;
        using var buffer = new MemoryStream((int)Math.Min(context.Request.ContentLength ?? 0, maxBytes));
        await context.Request.Body.CopyToAsync(buffer, context.RequestAborted);
        return buffer.ToArray();
    }

    public static async Task<T> ReadJsonAsync<T>(HttpContext context, int maxBytes, JsonTypeInfo<T> type)
    {
        var bytes = await ReadAsync(context, maxBytes, "application/json");
        try
        {
            return JsonSerializer.Deserialize(bytes, type) ?? throw new RefusalException("The request should be a JSON object.");
        }
        catch (JsonException e)
        {
            throw new RefusalException("The request is not the JSON that is asked for here.", e);
        }
    }

    // A page of another site may send text without asking first, but not these kinds.
    public static void CheckKind(HttpContext context, string mediaType)
    {
        if (context.Request.Headers.ContentEncoding.Count > 0)
        {
            throw new RefusalException("Packed bodies are not taken; send it as it is.");
        }

        var said = context.Request.ContentType?.Split(';')[0].Trim();
        if (!string.Equals(said, mediaType, StringComparison.OrdinalIgnoreCase))
        {
            throw new RefusalException($"The body should be of the kind {mediaType}.");
        }
    }
}
