namespace Foramen.Pages;

/// <summary>Something that a page is made of cannot be used; the message says what and where.</summary>
public sealed class PageException(string message) : Exception(message);
