using Foramen.Pages;

// The repository's root, then what to write; both pages where nothing is said.
if (args.Length is < 1 or > 2 || args.Skip(1).Any(which => !MadePages.Names.Contains(which)))
{
    await Console.Error.WriteLineAsync($"Give the repository's root and one of: {string.Join(", ", MadePages.Names)}.");
    return 2;
}

try
{
    foreach (var name in args.Length > 1 ? [args[1]] : MadePages.Names)
    {
        await File.WriteAllTextAsync(MadePages.File(args[0], name), MadePages.Write(args[0], name));
        Console.WriteLine($"Wrote {MadePages.File(args[0], name)}.");
    }

    return 0;
}
catch (PageException exception)
{
    await Console.Error.WriteLineAsync(exception.Message);
    return 2;
}
