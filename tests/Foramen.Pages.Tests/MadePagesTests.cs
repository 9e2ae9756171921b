namespace Foramen.Pages.Tests;

/// <summary>The pages that are made of other files are those that would be made now.</summary>
public class MadePagesTests
{
    public static TheoryData<string> Names => [.. MadePages.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_committed_page_is_up_to_date(string name)
        => Assert.True(
            MadePages.Write(Repository.Root, name) == File.ReadAllText(MadePages.File(Repository.Root, name)),
            $"The page \"{name}\" is not what its sources say; run tools/pages {name} and look at the difference.");
}
