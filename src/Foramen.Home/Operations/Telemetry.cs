using OpenTelemetry.Metrics;

namespace Foramen.Home.Operations;

/// <summary>Hands the counters on to a collector, only where its owner has named one; without that nothing leaves the machine.</summary>
internal static class Telemetry
{
    private const string Collector = "OTEL_EXPORTER_OTLP_ENDPOINT";

    public static void AddTo(WebApplicationBuilder builder)
    {
        if (!string.IsNullOrEmpty(Environment.GetEnvironmentVariable(Collector)))
        {
            builder.Services.AddOpenTelemetry().WithMetrics(metrics => metrics
                .AddMeter(HomeMetrics.MeterName, "Microsoft.AspNetCore.Hosting", "Microsoft.AspNetCore.Server.Kestrel")
                .AddRuntimeInstrumentation()
                .AddOtlpExporter());
        }
    }
}
