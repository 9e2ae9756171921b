namespace Foramen.Journal; internal static class Placeholder { }
