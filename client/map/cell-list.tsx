import type { Cell } from "../../server/contract.ts";
import { mapWords } from "../texts/map.ts";
import { FiguresTable } from "../ui/figures-table.tsx";
import { format, formatIn, type Unit } from "../units.ts";
import { isWide } from "./cell-features.ts";
import { nameOf } from "./cell-tunes.tsx";

interface CellListProps {
  cells: readonly Cell[] | null;
  unit: Unit;
  onOpen: (cell: string) => void;
  /** A cell that stands for several was asked for. */
  onWide: (cell: string) => void;
}

/** Every fact of the cells as text, and the keyboard's way to their tunes. */
export function CellList({ cells, unit, onOpen, onWide }: CellListProps) {
  if (!cells) return null;
  return (
    <details>
      <summary>
        {mapWords.cells} ({cells.length})
      </summary>
      {cells.length === 0 ? (
        <p>{mapWords.cellsNone}</p>
      ) : (
        <FiguresTable label={mapWords.cells} columns={mapWords.cellColumns}>
          {cells.map((cell) => (
            <tr key={cell.cell}>
              <th scope="row">
                <button
                  type="button"
                  class="plain"
                  aria-label={nameOf(cell)}
                  onClick={() => (isWide(cell) ? onWide : onOpen)(cell.cell)}
                >
                  {format(cell.lat, 1)}, {format(cell.lon, 1)}
                  {isWide(cell) && ` (${mapWords.cellsWithin(cell.cells_within ?? 0)})`}
                </button>
              </th>
              <td>{formatIn(cell.elevation_m, unit)}</td>
              <td>{cell.tunes}</td>
              <td>{cell.contributors}</td>
              <td>{mapWords.shift(cell.mixture_shift_pct.low)}</td>
              <td>{mapWords.shift(cell.mixture_shift_pct.high)}</td>
            </tr>
          ))}
        </FiguresTable>
      )}
    </details>
  );
}
