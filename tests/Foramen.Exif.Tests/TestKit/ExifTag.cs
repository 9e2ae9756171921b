namespace Foramen.Exif.Tests.TestKit;

/// <summary>Tag numbers of Exif 2.3 (CIPA DC-008-2012, tables 4 to 8), typed from the standard and not from the reader.</summary>
public static class ExifTag
{
    public const ushort Orientation = 0x0112;
    public const ushort ExposureTime = 0x829A;
    public const ushort FNumber = 0x829D;
    public const ushort ExifDirectory = 0x8769;
    public const ushort PhotographicSensitivity = 0x8827;
    public const ushort SensitivityType = 0x8830;
    public const ushort StandardOutputSensitivity = 0x8831;
    public const ushort RecommendedExposureIndex = 0x8832;
    public const ushort IsoSpeed = 0x8833;
    public const ushort DateTimeOriginal = 0x9003;
    public const ushort ShutterSpeedValue = 0x9201;
    public const ushort ApertureValue = 0x9202;
    public const ushort BrightnessValue = 0x9203;
    public const ushort ColorSpace = 0xA001;
    public const ushort FocalLengthIn35mmFilm = 0xA405;
}
