import { KeyHint } from "../../../../parts/key-hint.tsx";
import { useShortcut } from "../../../../parts/shortcuts.ts";
import { type Noted, useBenchWays } from "./opened.ts";

interface Tile {
  readonly what: Noted;
  readonly key: string;
  readonly says: string;
  readonly does: string;
}

const tiles: readonly Tile[] = [
  { what: "timeOut", key: "o", says: "Time-out", does: "Name tooth and side" },
  { what: "anaesthetic", key: "j", says: "Injection", does: "Note an injection" },
  { what: "isolation", key: "b", says: "Dam", does: "Note the rubber dam, or why not" },
  { what: "irrigant", key: "r", says: "Irrigant", does: "Note an irrigant" },
  { what: "solvent", key: "s", says: "Solvent", does: "Note a dose of solvent" },
  { what: "instrument", key: "i", says: "Instrument", does: "Instruments into the next canal" },
  { what: "ultrasound", key: "u", says: "Ultrasound", does: "Note a burst of ultrasound" },
  { what: "medicament", key: "m", says: "Medicament", does: "Note the medicament" },
  { what: "filling", key: "f", says: "Filling", does: "Note what stays in the tooth" },
  { what: "temporary", key: "w", says: "Temporary", does: "Note the temporary filling" },
  { what: "holdPoint", key: "p", says: "Hold point", does: "Note who looked, and what was said" },
  { what: "count", key: "c", says: "Count", does: "Count the instruments" },
  { what: "note", key: "n", says: "Note", does: "Note a line at this minute" },
  { what: "afterwards", key: "l", says: "Later", does: "Note a call, pain or a visit afterwards" },
];

/** A large target, with its key, for everything that is noted at the chair. */
export function VisitTiles() {
  const { open } = useBenchWays();
  return (
    <div className="bench-tiles" role="toolbar" aria-label="Note">
      {tiles.map((tile) => (
        <BenchTile key={tile.what} tile={tile} open={() => open(tile.what)} />
      ))}
    </div>
  );
}

function BenchTile({ tile, open }: { readonly tile: Tile; readonly open: () => void }) {
  // The key of the instruments is heard by their own table.
  useShortcut(tile.key, tile.what === "instrument" ? "Case" : "Visit", tile.does, () =>
    tile.what === "instrument" ? false : open(),
  );
  return (
    <button type="button" className="bench-tile" aria-keyshortcuts={tile.key} title={tile.does} onClick={open}>
      {tile.says}
      <KeyHint keys={tile.key} />
    </button>
  );
}
