namespace Foramen.Field.Texts;

public static partial class Words
{
    /// <summary>About workshops.</summary>
    public static class Workshops
    {
        public const string Title = "Workshop";
        public const string Lead = "Lead a workshop";
        public const string JoinWhat = "Join the workshop of whoever showed you the square. Everyone sees its papers, test strips, bottles and places; your sheets only you and the leader.";
        public const string JoinCaution = "With your sheets goes all that is written on this device, also from before. It stays with the leader when you leave.";
        public const string YourName = "Your name";
        public const string YourNameHint = "For the leader.";
        public const string YourNameMissing = "Write your name.";
        public const string CodeHint = "Filled in where you scanned the square.";
        public const string CodeMissing = "Type the code that the leader shows.";
        public const string Join = "Join the workshop";
        public const string MemberWhat = "Your sheets are seen by you and the leader. Papers, test strips, bottles with what went through them, and places are everyone's, also those you add.";
        public const string Leaving = "Leaving";
        public const string LeaveWhy = "What is written stays on this device and with the leader; from then on nothing goes either way.";
        public const string Leave = "Leave the workshop";
        public const string Left = "You have left. Your journal is still on this device.";
        public const string OpenTitle = "A new workshop";
        public const string OpenWhat = "People join with their own phones. Each sees the own sheets, you see all, and everyone shares papers, test strips, bottles and places.";
        public const string OpenCaution = "Whoever joins sees the papers, test strips, bottles and places of your whole journal, with where the places are.";
        public const string Name = "Name of the workshop";
        public const string NameHint = "For those who join.";
        public const string NameMissing = "Give the workshop a name.";
        public const string Open = "Open the workshop";
        public const string Show = "Let people join";
        public const string Scan = "Let everyone scan this, or open the address and type the code. It is good for four hours, until a new one is shown.";
        public const string EndThis = "End this workshop…";
        public const string EndWhy = "Nobody in it meets Home any more. What everyone wrote stays here, and with each their own.";
        public const string End = "End it";
        public const string GoOn = "Go on with it";

        public static string In(string name) => $"In the workshop “{name}”.";

        public static string Members(int count) => count switch
        {
            0 => "Nobody has joined yet",
            1 => "1 person has joined",
            _ => $"{count} people have joined",
        };
    }
}
