using System.Globalization;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Print;

/// <summary>Reads the data of an SVG path (SVG 1.1, section 8.3) into rings; every subpath counts as closed. Curves become short straight lines.</summary>
internal sealed class SvgPathData
{
    private const int MostCharacters = 200_000;
    private const int MostCommands = 20_000;
    private const int CurveParts = 16;
    private const double Largest = 1e6;

    private readonly string data;
    private readonly List<List<(double X, double Y)>> rings = [];
    private int at;
    private int commands;
    private (double X, double Y) here, start, control;
    private char last;

    private SvgPathData(string data) => this.data = data;

    /// <summary>The rings, y downwards.</summary>
    /// <exception cref="RefusalException">Not path data, or too much of it.</exception>
    public static IReadOnlyList<IReadOnlyList<(double X, double Y)>> Rings(string data)
    {
        if (string.IsNullOrWhiteSpace(data))
        {
            throw new RefusalException("The path is empty; give path data such as \"M 0 0 L 10 0 L 5 8 Z\".");
        }

        if (data.Length > MostCharacters)
        {
            throw new RefusalException($"The path has {data.Length} characters; up to {MostCharacters} are read, so simplify it.");
        }

        var reader = new SvgPathData(data);
        reader.ReadAll();
        return [.. reader.rings.Where(ring => ring.Count >= 3)];
    }

    private void ReadAll()
    {
        SkipSeparators();
        while (at < data.Length)
        {
            var command = data[at];
            if (char.ToUpperInvariant(command) is not ('M' or 'L' or 'H' or 'V' or 'C' or 'S' or 'Q' or 'T' or 'A' or 'Z') || (rings.Count == 0 && command is not ('M' or 'm')))
            {
                throw Wrong(rings.Count == 0 ? "should begin with M" : $"has “{(char.IsControl(command) ? '?' : command)}” where a command should be");
            }

            at++;
            SkipSeparators();
            do
            {
                if (++commands > MostCommands)
                {
                    throw new RefusalException($"The path has more than {MostCommands} segments; simplify it.");
                }

                Step(command);
                last = command;
                SkipSeparators();

                // Further pairs after a move are lines.
                command = command == 'M' ? 'L' : command == 'm' ? 'l' : command;
            }
            while (char.ToUpperInvariant(command) != 'Z' && at < data.Length && (char.IsAsciiDigit(data[at]) || data[at] is '-' or '+' or '.'));
        }
    }

    private void Step(char command)
    {
        var relative = char.IsLower(command) ? here : (X: 0.0, Y: 0.0);
        (double X, double Y) Pair() => (relative.X + Number(), relative.Y + Number());
        var after = here;
        switch (char.ToUpperInvariant(command))
        {
            case 'M':
                here = start = after = control = Pair();
                rings.Add([here]);
                return;
            case 'L':
                LineTo(Pair());
                return;
            case 'H':
                LineTo((relative.X + Number(), here.Y));
                return;
            case 'V':
                LineTo((here.X, relative.Y + Number()));
                return;
            case 'C':
                Cubic(Pair(), Pair(), Pair());
                return;
            case 'S':
                Cubic(Reflected('C', 'S'), Pair(), Pair());
                return;
            case 'Q':
                Quadratic(Pair(), Pair());
                return;
            case 'T':
                Quadratic(Reflected('Q', 'T'), Pair());
                return;
            case 'A':
                Arc(Number(), Number(), Number(), Flag(), Flag(), Pair());
                return;
            default:
                here = control = start;
                rings.Add([here]);
                return;
        }
    }

    // The first control point of a smooth curve is the last one's mirrored at the place between, if the last was such a curve.
    private (double X, double Y) Reflected(char one, char other)
        => char.ToUpperInvariant(last) == one || char.ToUpperInvariant(last) == other ? ((2 * here.X) - control.X, (2 * here.Y) - control.Y) : here;

    private void LineTo((double X, double Y) to)
    {
        rings[^1].Add(to);
        here = control = to;
    }

    private void Cubic((double X, double Y) first, (double X, double Y) second, (double X, double Y) to)
    {
        var from = here;
        for (var i = 1; i <= CurveParts; i++)
        {
            var t = i / (double)CurveParts;
            var (a, b, c, d) = ((1 - t) * (1 - t) * (1 - t), 3 * t * (1 - t) * (1 - t), 3 * t * t * (1 - t), t * t * t);
            rings[^1].Add(((a * from.X) + (b * first.X) + (c * second.X) + (d * to.X), (a * from.Y) + (b * first.Y) + (c * second.Y) + (d * to.Y)));
        }

        (here, control) = (to, second);
    }

    private void Quadratic((double X, double Y) middle, (double X, double Y) to)
    {
        var from = here;
        for (var i = 1; i <= CurveParts; i++)
        {
            var t = i / (double)CurveParts;
            var (a, b, c) = ((1 - t) * (1 - t), 2 * t * (1 - t), t * t);
            rings[^1].Add(((a * from.X) + (b * middle.X) + (c * to.X), (a * from.Y) + (b * middle.Y) + (c * to.Y)));
        }

        (here, control) = (to, middle);
    }

    // SVG 1.1, appendix F.6.5 and F.6.6: from end points to centre, radii enlarged where they are too small.
    private void Arc(double radiusX, double radiusY, double turn, bool large, bool sweep, (double X, double Y) to)
    {
        var (rx, ry, from) = (Math.Abs(radiusX), Math.Abs(radiusY), here);
        if (rx == 0 || ry == 0 || to == from)
        {
            LineTo(to);
            return;
        }

        var (cos, sin) = (Math.Cos(turn * Math.PI / 180), Math.Sin(turn * Math.PI / 180));
        var (halfX, halfY) = ((from.X - to.X) / 2, (from.Y - to.Y) / 2);
        var (x, y) = ((cos * halfX) + (sin * halfY), (cos * halfY) - (sin * halfX));
        var grow = Math.Sqrt((x * x / (rx * rx)) + (y * y / (ry * ry)));
        (rx, ry) = grow > 1 ? (rx * grow, ry * grow) : (rx, ry);
        var under = (rx * rx * y * y) + (ry * ry * x * x);
        var root = Math.Sqrt(Math.Max(0, ((rx * rx * ry * ry) - under) / under)) * (large == sweep ? -1 : 1);
        var (ownX, ownY) = (root * rx * y / ry, -root * ry * x / rx);
        var (centreX, centreY) = ((cos * ownX) - (sin * ownY) + ((from.X + to.X) / 2), (sin * ownX) + (cos * ownY) + ((from.Y + to.Y) / 2));
        var begin = Math.Atan2((y - ownY) / ry, (x - ownX) / rx);
        var end = Math.Atan2((-y - ownY) / ry, (-x - ownX) / rx);
        var swept = end - begin;
        swept += sweep && swept < 0 ? 2 * Math.PI : !sweep && swept > 0 ? -2 * Math.PI : 0;
        const int Parts = 4 * CurveParts;
        for (var i = 1; i < Parts; i++)
        {
            var angle = begin + (swept * i / Parts);
            var (u, v) = (rx * Math.Cos(angle), ry * Math.Sin(angle));
            rings[^1].Add(((cos * u) - (sin * v) + centreX, (sin * u) + (cos * v) + centreY));
        }

        LineTo(to);
    }

    private bool Flag()
    {
        SkipSeparators();
        if (at < data.Length && data[at] is '0' or '1')
        {
            return data[at++] == '1';
        }

        throw Wrong("has an arc without its flags");
    }

    private double Number()
    {
        SkipSeparators();
        var from = at;
        at += at < data.Length && data[at] is '-' or '+' ? 1 : 0;
        var (point, exponent) = (false, false);
        while (at < data.Length)
        {
            var letter = data[at];
            if (letter == '.' && !point && !exponent)
            {
                point = true;
            }
            else if (letter is 'e' or 'E' && !exponent && at > from)
            {
                exponent = true;
                at += at + 1 < data.Length && data[at + 1] is '-' or '+' ? 1 : 0;
            }
            else if (!char.IsAsciiDigit(letter))
            {
                break;
            }

            at++;
        }

        return double.TryParse(data.AsSpan(from, at - from), NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && Math.Abs(value) <= Largest
            ? value
            : throw Wrong("lacks a number");
    }

    private void SkipSeparators()
    {
        while (at < data.Length && (data[at] == ',' || char.IsWhiteSpace(data[at])))
        {
            at++;
        }
    }

    private RefusalException Wrong(string what) => new($"The path {what}, at its character {at + 1}; give path data such as \"M 0 0 L 10 0 L 5 8 Z\".");
}
