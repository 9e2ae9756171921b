namespace Foramen.Field.Homes;

/// <summary>The way to the Home behind this address. Nothing here throws: what did not work is in the answer.</summary>
public interface IHomeLink
{
    /// <summary>Asks Home something.</summary>
    /// <param name="method">GET, POST or DELETE.</param>
    /// <param name="path">From the app's own address, such as <c>api/home</c>.</param>
    /// <param name="token">This device's token; empty where it has none.</param>
    /// <param name="mediaType">Of the body; empty where there is none.</param>
    /// <param name="body">The body.</param>
    Task<HomeAnswer> AskAsync(string method, string path, string token, string mediaType = "", string body = "");

    /// <summary>Whether this tab is the one that meets Home: of several only one does, and the next when it is closed.</summary>
    bool MayMeet { get; }

    /// <summary>Sends a picture that is kept on this device, going on where it was cut.</summary>
    /// <returns>Whether Home has it now.</returns>
    Task<bool> SendPictureAsync(string contentHash, string token);

    /// <summary>Fetches a picture from Home and keeps it, if it holds what it should.</summary>
    Task<bool> FetchPictureAsync(string contentHash, string token);

    /// <summary>The pictures of these that are kept on this device.</summary>
    Task<IReadOnlyList<string>> KeptPicturesAsync(IReadOnlyList<string> contentHashes);
}
