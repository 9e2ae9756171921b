using System.Reflection;
using Foramen.Engine.Quantities;
using NetArchTest.Rules;

namespace Foramen.Engine.Tests.Architecture;

/// <summary>Rooms lie along the path of light; a later one may use an earlier one, never the other way round.</summary>
public class RoomOrderTests
{
    private const string Root = "Foramen.Engine";

    private static readonly string[] Rooms = ["Quantities", "Light", "Scene", "Camera", "Paper", "Exposure", "Bath", "Print", "Learning"];

    private static readonly Assembly Engine = typeof(Guard).Assembly;

    public static TheoryData<string> AllRooms => [.. Rooms];

    [Theory]
    [MemberData(nameof(AllRooms))]
    public void A_room_uses_only_earlier_rooms(string room)
    {
        var later = Rooms.SkipWhile(name => name != room).Skip(1).Select(name => $"{Root}.{name}").ToArray();
        Assert.Empty(TypesUsing(room, later));
    }

    // If these were not found, neither would a breach be.
    [Theory]
    [InlineData("Scene", "Light")]
    [InlineData("Scene", "Quantities")]
    [InlineData("Light", "Quantities")]
    [InlineData("Paper", "Quantities")]
    public void The_check_sees_the_uses_that_are_allowed(string room, string earlier)
        => Assert.NotEmpty(TypesUsing(room, $"{Root}.{earlier}"));

    [Fact]
    public void Every_type_lives_in_a_room()
    {
        var homeless = Engine.GetTypes()
            .Where(type => type.Namespace?.StartsWith(Root, StringComparison.Ordinal) == true)
            .Where(type => !Rooms.Contains(type.Namespace!.Split('.').ElementAtOrDefault(2)))
            .Select(type => type.FullName);
        Assert.Empty(homeless);
    }

    [Fact]
    public void The_engine_uses_no_other_part_of_foramen()
        => Assert.DoesNotContain(Engine.GetReferencedAssemblies(), name => name.Name!.StartsWith("Foramen", StringComparison.OrdinalIgnoreCase));

    [Fact]
    public void The_engine_touches_no_file_network_screen_or_clock()
    {
        string[] outside =
        [
            "System.IO.File", "System.IO.FileStream", "System.IO.Directory", "System.Console", "System.Net", "System.Environment",
            "System.Diagnostics.Process", "System.Diagnostics.Stopwatch", "System.TimeProvider", "System.Random", "Microsoft.JSInterop",
        ];
        Assert.Empty(Rooms.SelectMany(room => TypesUsing(room, outside)));

        // The embedded tables are read through a StreamReader, so the same mechanism must see that.
        Assert.NotEmpty(TypesUsing("Light", "System.IO.StreamReader"));
    }

    private static IEnumerable<string> TypesUsing(string room, params string[] dependencies)
        => dependencies.Length == 0
            ? []
            : Types.InAssembly(Engine).That().ResideInNamespaceStartingWith($"{Root}.{room}").And().HaveDependencyOnAny(dependencies).GetTypes()
                .Select(type => type.FullName!);
}
