using System.Buffers.Binary;
using System.Collections.Concurrent;
using System.Text;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace Foramen.Home.Tests.Operations;

/// <summary>
/// A collector of metrics as the OpenTelemetry protocol over HTTP has it: POST /v1/metrics with a protobuf ExportMetricsServiceRequest. Reads what it needs of
/// opentelemetry-proto's metrics.proto by the wire format: resource_metrics 1 → scope_metrics 2 → metrics 2 → name 1, sum 7 → data_points 1 → as_int 6.
/// </summary>
internal sealed class MetricsCollector : IAsyncDisposable
{
    private readonly WebApplication app;

    private MetricsCollector(WebApplication app) => this.app = app;

    public string Address => app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First();

    /// <summary>The last value of every whole-number sum by its name.</summary>
    public ConcurrentDictionary<string, long> Sums { get; } = new();

    /// <summary>The names of everything that came.</summary>
    public ConcurrentDictionary<string, bool> Names { get; } = new();

    /// <summary>Everything that came, as text.</summary>
    public ConcurrentQueue<string> Bodies { get; } = new();

    public static async Task<MetricsCollector> StartAsync()
    {
        var builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.UseUrls("http://127.0.0.1:0");
        var collector = new MetricsCollector(builder.Build());
        collector.app.MapPost("/v1/metrics", async (HttpContext context) =>
        {
            using var buffer = new MemoryStream();
            await context.Request.Body.CopyToAsync(buffer, context.RequestAborted);
            collector.Take(buffer.ToArray());
        });
        await collector.app.StartAsync();
        return collector;
    }

    public ValueTask DisposeAsync() => app.DisposeAsync();

    private void Take(byte[] request)
    {
        Bodies.Enqueue(Encoding.Latin1.GetString(request));
        foreach (var metric in Under(request, 1, 2, 2))
        {
            var name = Encoding.UTF8.GetString(Fields(metric).First(field => field.Number == 1).Bytes.Span);
            Names[name] = true;
            foreach (var point in Under(metric, 7, 1))
            {
                foreach (var value in Fields(point).Where(field => field.Number == 6))
                {
                    Sums[name] = BinaryPrimitives.ReadInt64LittleEndian(value.Bytes.Span);
                }
            }
        }
    }

    private static IEnumerable<ReadOnlyMemory<byte>> Under(ReadOnlyMemory<byte> message, params int[] path)
        => path is [] ? [message] : Fields(message).Where(field => field.Number == path[0]).SelectMany(field => Under(field.Bytes, path[1..]));

    // The wire format of Protocol Buffers: a tag, then by its last three bits a varint, eight bytes, a length and so many bytes, or four bytes.
    private static List<(int Number, ReadOnlyMemory<byte> Bytes)> Fields(ReadOnlyMemory<byte> message)
    {
        var fields = new List<(int, ReadOnlyMemory<byte>)>();
        for (var at = 0; at < message.Length;)
        {
            var tag = Varint(message.Span, ref at);
            var from = at;
            var length = (tag & 7) switch { 0 => 0, 1 => 8, 2 => (int)Varint(message.Span, ref at), 5 => 4, var kind => throw new InvalidDataException($"Wire type {kind}.") };
            if ((tag & 7) == 0)
            {
                Varint(message.Span, ref at);
                fields.Add(((int)(tag >> 3), message[from..at]));
                continue;
            }

            fields.Add(((int)(tag >> 3), message.Slice(at, length)));
            at += length;
        }

        return fields;
    }

    private static ulong Varint(ReadOnlySpan<byte> bytes, ref int at)
    {
        var value = 0UL;
        for (var shift = 0; ; shift += 7)
        {
            var next = bytes[at++];
            value |= (ulong)(next & 0x7F) << shift;
            if (next < 0x80)
            {
                return value;
            }
        }
    }
}
