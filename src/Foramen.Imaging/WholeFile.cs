using Foramen.Engine.Quantities;

namespace Foramen.Imaging;

/// <summary>Writes a file so that it is there whole or not at all: into a neighbour first, then renamed.</summary>
public static class WholeFile
{
    /// <summary>Writes a file.</summary>
    /// <param name="path">Where it should be; an older file there is replaced.</param>
    /// <param name="write">Writes the content.</param>
    /// <exception cref="RefusalException">The folder is missing or may not be written.</exception>
    public static void Write(string path, Action<Stream> write)
    {
        var full = Path.GetFullPath(path);
        var directory = Path.GetDirectoryName(full);
        if (Directory.Exists(full))
        {
            throw new RefusalException($"{path} is a folder; name a file in it.");
        }

        if (directory is null || !Directory.Exists(directory))
        {
            throw new RefusalException($"There is no folder {directory} to write {Path.GetFileName(path)} into; make it first.");
        }

        var temporary = Path.Combine(directory, $".{Path.GetFileName(path)}.{Environment.ProcessId}.part");
        try
        {
            using (var stream = new FileStream(temporary, FileMode.Create, FileAccess.ReadWrite, FileShare.None))
            {
                write(stream);
                stream.Flush(flushToDisk: true);
            }

            File.Move(temporary, full, overwrite: true);
        }
        catch (UnauthorizedAccessException failure)
        {
            throw new RefusalException($"{path} may not be written there; choose another folder.", failure);
        }
        finally
        {
            File.Delete(temporary);
        }
    }
}
