namespace Foramen.Field.Device;

/// <summary>Hands files on.</summary>
public interface IShare
{
    /// <summary>By the share sheet where there is one, else as a download.</summary>
    /// <param name="fileName">Its name.</param>
    /// <param name="mediaType">Its media type.</param>
    /// <param name="bytes">What is in it.</param>
    /// <param name="preferShare">False: always a download.</param>
    Task<HandedOn> HandAsync(string fileName, string mediaType, byte[] bytes, bool preferShare = true);
}
