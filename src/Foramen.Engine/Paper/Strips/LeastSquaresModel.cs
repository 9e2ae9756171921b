namespace Foramen.Engine.Paper;

/// <summary>Residuals of a least-squares problem and their derivatives at some parameters.</summary>
/// <param name="parameters">Where.</param>
/// <param name="residuals">To be filled, one a row.</param>
/// <param name="jacobian">To be filled row by row: the derivative of each residual by each parameter.</param>
internal delegate void LeastSquaresModel(ReadOnlySpan<double> parameters, Span<double> residuals, Span<double> jacobian);
