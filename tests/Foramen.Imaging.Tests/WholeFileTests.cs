using Foramen.Engine.Quantities;
using Foramen.Imaging.Tests.TestKit;

namespace Foramen.Imaging.Tests;

public sealed class WholeFileTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void A_file_is_there_whole()
    {
        WholeFile.Write(folder.File("print"), stream => stream.Write([1, 2, 3]));

        Assert.Equal([1, 2, 3], File.ReadAllBytes(folder.File("print")));
        Assert.Equal(["print"], folder.Names);
    }

    [Fact]
    public void While_it_is_written_the_old_one_stands()
    {
        var path = folder.With("print", [9]);
        WholeFile.Write(path, stream =>
        {
            stream.Write([1, 2, 3]);
            stream.Flush();
            Assert.Equal([9], File.ReadAllBytes(path));
        });

        Assert.Equal([1, 2, 3], File.ReadAllBytes(path));
    }

    [Fact]
    public void Whoever_reads_the_old_one_reads_it_to_its_end()
    {
        // A rename leaves the old file to those who have it open (POSIX rename).
        Assert.SkipUnless(OperatingSystem.IsLinux() || OperatingSystem.IsMacOS(), "Open files cannot be replaced here.");
        var path = folder.With("print", [9, 8, 7]);
        using var old = File.OpenRead(path);
        WholeFile.Write(path, stream => stream.Write([1]));

        Assert.Equal([9, 8, 7], [old.ReadByte(), old.ReadByte(), old.ReadByte()]);
    }

    [Fact]
    public void An_exception_leaves_nothing_behind_and_goes_on()
    {
        var path = folder.With("print", [9]);
        Assert.Throws<OperationCanceledException>(() => WholeFile.Write(path, stream =>
        {
            stream.Write([1, 2, 3]);
            throw new OperationCanceledException();
        }));
        Assert.Throws<RefusalException>(() => WholeFile.Write(path, _ => throw new IOException("No space left on device")));

        Assert.Equal([9], File.ReadAllBytes(path));
        Assert.Equal(["print"], folder.Names);
    }

    [Fact]
    public void A_writer_may_close_its_stream()
    {
        WholeFile.Write(folder.File("print"), stream =>
        {
            stream.Write([1]);
            stream.Dispose();
        });

        Assert.Equal([1], File.ReadAllBytes(folder.File("print")));
    }

    [Fact]
    public void Writers_at_once_each_write_a_whole_file()
    {
        Parallel.For(0, 20, number => WholeFile.Write(folder.File("print"), stream => stream.Write(Enumerable.Repeat((byte)number, 5000).ToArray())));

        var bytes = File.ReadAllBytes(folder.File("print"));
        Assert.Equal(5000, bytes.Length);
        Assert.Single(bytes.Distinct());
        Assert.Equal(["print"], folder.Names);
    }

    [Theory]
    [InlineData("", "no name")]
    [InlineData("nowhere/print.png", "no folder")]
    [InlineData("{folder}", "is a folder")]
    [InlineData("{folder}/{long}", "cannot be written")]
    [InlineData("/dev/null", "device")]
    public void Where_nothing_can_be_written_a_sentence_says_so(string path, string says)
    {
        path = path.Replace("{folder}", folder.Path, StringComparison.Ordinal).Replace("{long}", new string('x', 300), StringComparison.Ordinal);
        if (path.StartsWith("/dev", StringComparison.Ordinal))
        {
            Assert.SkipUnless(File.Exists(path), "There are no such devices here.");
        }

        var refusal = Assert.Throws<RefusalException>(() => WholeFile.Write(path, stream => stream.Write([1])));
        Assert.Contains(says, refusal.Message, StringComparison.Ordinal);
        Assert.Empty(folder.Names);
    }

    [Fact]
    public void A_folder_that_may_not_be_written_is_refused()
    {
        // Modes do not bind the superuser; the kernel's own tree binds everyone.
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Needs a folder that nobody may write.");
        var refusal = Assert.Throws<RefusalException>(() => WholeFile.Write("/proc/self/print.png", stream => stream.Write([1])));
        Assert.Contains("/proc/self/print.png", refusal.Message, StringComparison.Ordinal);
        Assert.EndsWith(".", refusal.Message, StringComparison.Ordinal);
    }
}
