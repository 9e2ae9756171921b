namespace Foramen.Cli.Output;

/// <summary>What <c>foramen preview --json</c> says.</summary>
internal sealed record PreviewReport
{
    /// <summary>Files written.</summary>
    public required IReadOnlyList<string> Files { get; init; }

    public required int WidthPixels { get; init; }

    public required int HeightPixels { get; init; }

    public required double MillimetresPerPixel { get; init; }

    /// <summary>Diameter that holds 80 % of a point's light, mm.</summary>
    public required double SpotWidthMm { get; init; }

    /// <summary>Part of the sheet that the photograph does not cover, 0 to 1.</summary>
    public required double UnknownShare { get; init; }

    /// <summary>What is left of each moving region, in the file's order; empty where nothing moves.</summary>
    public required IReadOnlyList<MovingReport> Moving { get; init; }

    public required ExposeReport Plan { get; init; }
}
