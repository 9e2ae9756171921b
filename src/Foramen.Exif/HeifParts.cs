namespace Foramen.Exif;

/// <summary>
/// A HEIF file (ISO/IEC 23008-12). Its boxes nest and point; the two parts are found by their own heads instead, which an Exif item ("Exif", two zeros, TIFF header)
/// and a colour box ("colr", "prof") always have. Limit: the first of each counts, though a file may hold several pictures.
/// </summary>
internal static class HeifParts
{
    public static FileParts Of(ReadOnlyMemory<byte> file)
    {
        var exif = Math.Min(Find(file, "Exif\0\0II*\0"u8), Find(file, "Exif\0\0MM\0*"u8));
        var profile = Find(file, "colrprof"u8);
        return new FileParts(
            exif < file.Length ? FileParts.Bounded(file[(exif + 6)..]) : default,
            profile < file.Length ? FileParts.Bounded(file[(profile + 8)..]) : default)
        { KeepsTurnItself = true };
    }

    private static int Find(ReadOnlyMemory<byte> file, ReadOnlySpan<byte> head)
        => file.Span.IndexOf(head) is var at and >= 0 ? at : file.Length;
}
