using Foramen.Engine.Quantities;
using Foramen.Journal.Sync;
using Foramen.Storage;
using Microsoft.AspNetCore.Connections;

namespace Foramen.Home.Refusals;

/// <summary>Refusals on the wire: a status that any client understands, a kind that Field knows, one sentence.</summary>
internal static class Refusal
{
    public static Task WriteAsync(HttpContext context, int status, string kind, string sentence, int? line = null)
    {
        context.Response.StatusCode = status;
        if (status is StatusCodes.Status503ServiceUnavailable or StatusCodes.Status429TooManyRequests)
        {
            context.Response.Headers.RetryAfter = status == StatusCodes.Status429TooManyRequests ? "60" : "5";
        }

        return context.Response.WriteAsJsonAsync(new RefusalBody(kind, sentence, line), RefusalJson.Default.RefusalBody, cancellationToken: context.RequestAborted);
    }

    /// <summary>Runs an endpoint and turns what it throws into a refusal. What nobody foresaw stays an error of the server, without its words.</summary>
    public static async Task GuardAsync(HttpContext context, Func<Task> work)
    {
        try
        {
            await work();
        }
        catch (Exception e) when (e is ConnectionResetException || (e is OperationCanceledException && context.RequestAborted.IsCancellationRequested))
        {
            // The device hung up; nobody is left to be told, and nothing of it is left to be read.
            context.Abort();
        }
        catch (Exception e) when (!context.Response.HasStarted && Of(e) is { } refusal)
        {
            await WriteAsync(context, refusal.Status, refusal.Kind, refusal.Sentence, refusal.Line);
        }
    }

    private static (int Status, string Kind, string Sentence, int? Line)? Of(Exception failure) => failure switch
    {
        BadBatchException { Line: { } line } e => (StatusCodes.Status400BadRequest, "badEntry", e.Message, line),
        BadBatchException e => (StatusCodes.Status400BadRequest, "cutShort", e.Message, null),
        RefusalException e => (StatusCodes.Status400BadRequest, "failed", e.Message, null),
        BadHttpRequestException { StatusCode: StatusCodes.Status413PayloadTooLarge } => (StatusCodes.Status413PayloadTooLarge, "failed", "That is more than Home takes at once.", null),
        BadHttpRequestException => (StatusCodes.Status400BadRequest, "cutShort", "The request was cut short; send it again.", null),
        StoreException { Trouble: StoreTrouble.Full } e => (StatusCodes.Status507InsufficientStorage, "full", e.Message, null),
        StoreException { Trouble: StoreTrouble.Damaged } => (StatusCodes.Status500InternalServerError, "failed", "Home's store is damaged; look at its log.", null),
        // The database's own words may name hosts and files; they stay in the log.
        StoreException { Trouble: StoreTrouble.Unreachable } => (StatusCodes.Status503ServiceUnavailable, "busy", "Home's database is away for the moment; try again.", null),
        StoreException e => (StatusCodes.Status503ServiceUnavailable, "busy", e.Message, null),
        _ => null,
    };
}
