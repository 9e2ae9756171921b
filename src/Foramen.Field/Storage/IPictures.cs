namespace Foramen.Field.Storage;

/// <summary>Photographs and scans on this device.</summary>
public interface IPictures
{
    /// <summary>An address to show a kept picture by, or null where it is not on this device.</summary>
    /// <param name="contentHash">SHA-256 of its bytes.</param>
    Task<string?> AddressOfAsync(string contentHash);

    /// <summary>Reads the file that an input element holds: keeps it whole and decodes it small.</summary>
    /// <param name="inputId">The element's id.</param>
    /// <param name="longSide">The longest side of the decoded picture, pixels.</param>
    /// <returns>The picture, or null where no file was chosen.</returns>
    /// <exception cref="Engine.Quantities.RefusalException">The browser cannot decode it.</exception>
    /// <exception cref="StoreRefusedException">It could not be kept.</exception>
    Task<TakenPicture?> TakeAsync(string inputId, int longSide);

    /// <summary>Decodes a kept picture again, or null where it is not on this device.</summary>
    Task<TakenPicture?> ReadAsync(string contentHash, int longSide);

    /// <summary>Fetches a picture from the host and keeps it, if it holds what it should.</summary>
    /// <param name="address">Where, from the app's own address.</param>
    /// <param name="contentHash">SHA-256 of its bytes.</param>
    /// <param name="mediaType">Its media type.</param>
    /// <returns>Whether it is on this device now.</returns>
    Task<bool> FetchAsync(string address, string contentHash, string mediaType);

    /// <summary>The bytes of the file that an input element holds (an import), or null where none was chosen.</summary>
    Task<byte[]?> ReadFileAsync(string inputId);
}
