namespace Foramen.Field.Outings;

/// <summary>A point in the course of a day's light.</summary>
/// <param name="Hours">Since the day began.</param>
/// <param name="SunElevationDegrees">Height of the sun.</param>
/// <param name="OnFacade">Whether it shines on the facade.</param>
/// <param name="InPicture">Whether it stands in the picture.</param>
/// <param name="ExposureSeconds">The exposure then; null where it is not known or there is too little light.</param>
public readonly record struct DayPoint(double Hours, double SunElevationDegrees, bool OnFacade, bool InPicture, double? ExposureSeconds);
