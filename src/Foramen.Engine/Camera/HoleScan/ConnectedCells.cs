namespace Foramen.Engine.Camera;

/// <summary>Flagged cells that touch each other, by side or corner, as one group with its bounds.</summary>
/// <param name="Left">First column.</param>
/// <param name="Top">First row.</param>
/// <param name="Right">Last column.</param>
/// <param name="Bottom">Last row.</param>
/// <param name="Count">Cells.</param>
internal readonly record struct ConnectedCells(int Left, int Top, int Right, int Bottom, int Count)
{
    /// <summary>The same bounds in pixels, where a cell is so many pixels wide.</summary>
    public ConnectedCells Scaled(int side) => new(Left * side, Top * side, ((Right + 1) * side) - 1, ((Bottom + 1) * side) - 1, Count * side * side);

    /// <summary>All groups. The flags are used up.</summary>
    public static List<ConnectedCells> Of(bool[] flags, int columns, int rows)
    {
        var groups = new List<ConnectedCells>();
        var stack = new Stack<int>();
        for (var start = 0; start < flags.Length; start++)
        {
            if (flags[start])
            {
                groups.Add(Flood(flags, columns, rows, start, stack, null));
            }
        }

        return groups;
    }

    /// <summary>The group that a cell belongs to; its flags are cleared and its cells told.</summary>
    public static ConnectedCells Flood(bool[] flags, int columns, int rows, int start, Stack<int> stack, Action<int, int>? cell)
    {
        var (left, top, right, bottom, count) = (columns, rows, 0, 0, 0);
        flags[start] = false;
        stack.Push(start);
        while (stack.Count > 0)
        {
            var (y, x) = Math.DivRem(stack.Pop(), columns);
            (left, top, right, bottom, count) = (Math.Min(left, x), Math.Min(top, y), Math.Max(right, x), Math.Max(bottom, y), count + 1);
            cell?.Invoke(x, y);
            for (var nextY = Math.Max(0, y - 1); nextY <= Math.Min(rows - 1, y + 1); nextY++)
            {
                for (var nextX = Math.Max(0, x - 1); nextX <= Math.Min(columns - 1, x + 1); nextX++)
                {
                    var next = (nextY * columns) + nextX;
                    if (flags[next])
                    {
                        flags[next] = false;
                        stack.Push(next);
                    }
                }
            }
        }

        return new ConnectedCells(left, top, right, bottom, count);
    }
}
