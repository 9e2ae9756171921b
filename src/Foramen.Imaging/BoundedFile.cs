using Foramen.Engine.Quantities;

namespace Foramen.Imaging;

/// <summary>Reads a whole file that may be no longer than a bound, however long it says it is: pipes and devices do not say.</summary>
internal static class BoundedFile
{
    /// <summary>The bytes of a file.</summary>
    /// <exception cref="RefusalException">Missing, a folder, longer than the bound, or not to be read.</exception>
    public static byte[] Read(string path, long mostBytes)
    {
        if (Directory.Exists(path))
        {
            throw new RefusalException($"{path} is a folder; name a photograph in it.");
        }

        if (!File.Exists(path))
        {
            throw new RefusalException($"There is no file {(path.Length == 0 ? "without a name" : path)}; name a photograph that exists.");
        }

        try
        {
            using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read, bufferSize: 0);
            return file.CanSeek && file.Length > 0 ? Known(file, path, mostBytes) : Unknown(file, path, mostBytes);
        }
        catch (Exception failure) when (failure is UnauthorizedAccessException or IOException)
        {
            throw new RefusalException($"{path} cannot be read; see whether you may read it and whether it is still there.", failure);
        }
    }

    private static byte[] Known(FileStream file, string path, long mostBytes)
    {
        if (file.Length > mostBytes)
        {
            throw TooLong(path, $"is {file.Length / 1_000_000} MB", mostBytes);
        }

        var bytes = GC.AllocateUninitializedArray<byte>((int)file.Length);
        file.ReadExactly(bytes);
        return bytes;
    }

    private static byte[] Unknown(FileStream file, string path, long mostBytes)
    {
        using var bytes = new MemoryStream();
        var buffer = new byte[65536];
        for (int read; (read = file.Read(buffer)) > 0;)
        {
            bytes.Write(buffer, 0, read);
            if (bytes.Length > mostBytes)
            {
                throw TooLong(path, "does not end", mostBytes);
            }
        }

        return bytes.ToArray();
    }

    private static RefusalException TooLong(string path, string how, long mostBytes)
        => new($"{path} {how}; photographs up to {mostBytes / 1_000_000} MB are read.");
}
