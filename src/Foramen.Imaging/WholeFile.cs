using Foramen.Engine.Quantities;

namespace Foramen.Imaging;

/// <summary>Writes a file so that it is there whole or not at all: into a neighbour first, then renamed.</summary>
public static class WholeFile
{
    /// <summary>Writes a file.</summary>
    /// <param name="path">Where it should be; an older file there is replaced.</param>
    /// <param name="write">Writes the content; it may close the stream, but then a power cut right after may lose the content. If it throws, no file is left or changed.</param>
    /// <exception cref="RefusalException">The folder is missing, may not be written, or is full.</exception>
    public static void Write(string path, Action<Stream> write)
    {
        if (path.Length == 0)
        {
            throw new RefusalException("The file to write has no name; give one.");
        }

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

        if (directory is "/dev" or "/dev/fd")
        {
            // A rename would put a plain file in a device's place.
            throw new RefusalException($"{path} is a device; name a file in a folder of your own.");
        }

        var temporary = Path.Combine(directory, $".foramen-{Guid.NewGuid():N}.part");
        try
        {
            using (var stream = new FileStream(temporary, FileMode.CreateNew, FileAccess.ReadWrite, FileShare.None))
            {
                write(stream);
                if (stream.CanWrite)
                {
                    stream.Flush(flushToDisk: true);
                }
            }

            File.Move(temporary, full, overwrite: true);
        }
        catch (UnauthorizedAccessException failure)
        {
            throw new RefusalException($"{path} may not be written there; choose another folder.", failure);
        }
        catch (IOException failure)
        {
            throw new RefusalException($"{path} cannot be written; the disk may be full or the name too long.", failure);
        }
        finally
        {
            // Only the renamed file is gone by now; deleting what is not there is no error.
            File.Delete(temporary);
        }
    }
}
