namespace Foramen.Cli.Output;

/// <summary>What <c>foramen mask --json</c> says.</summary>
internal sealed record MaskReport
{
    public required string Name { get; init; }

    /// <summary>Size on the finished print, mm.</summary>
    public required double WidthOnPrintMm { get; init; }

    public required double HeightOnPrintMm { get; init; }

    /// <summary>Size of the shape to cut, mm.</summary>
    public required double WidthToCutMm { get; init; }

    public required double HeightToCutMm { get; init; }

    /// <summary>Width of the shadow's soft edge on the print, mm.</summary>
    public required double PenumbraMm { get; init; }

    /// <summary>Whether the finished print shows the subject mirrored, as a direct positive does.</summary>
    public required bool SubjectMirrored { get; init; }

    /// <summary>How the shape lies where it is put, seen from where its template says.</summary>
    public required string Lies { get; init; }

    /// <summary>Files written.</summary>
    public required IReadOnlyList<string> Files { get; init; }
}
