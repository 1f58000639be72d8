import { useMemo } from "react";
import { Link } from "wouter";
import { instrumentToScale } from "../../../figures/instrument-to-scale.ts";
import { filesOf, instrumentsOf } from "../../../record/cabinet/items-of-cabinet.ts";
import { movementWords } from "../../../record/words/visit-words.ts";
import { Button } from "../../parts/button.tsx";
import { DemoMark } from "../../parts/demo-mark.tsx";
import { FigureView } from "../../parts/figure-view.tsx";
import { capital } from "../../words/capital.ts";
import { useCabinetNow } from "./cabinet-now.ts";
import { drawnInstrument } from "./drawn-instrument.ts";
import { FilesTable } from "./files-table.tsx";
import { listedInstruments, type MovedAlike } from "./listed-instruments.ts";

/** The cabinet at a glance: the counted files, and every instrument drawn to one scale. */
export function CabinetOverview({ missing }: { readonly missing: boolean }) {
  const { view, addHandFiles } = useCabinetNow();
  const isEmpty = view.items.length === 0;
  return (
    <article className="cabinet-item" aria-labelledby="cabinet-item">
      <header className="cabinet-item-head">
        <h2 id="cabinet-item" tabIndex={-1}>
          {isEmpty ? "Nothing in the cabinet yet" : "Overview"}
        </h2>
        {view.items.some(({ body }) => body.demo === true) && (
          <>
            <DemoMark />
            <span className="quiet">those marked demo</span>
          </>
        )}
      </header>
      {missing && <p role="status">The cabinet holds nothing of that address; it may have been taken out.</p>}
      {isEmpty && (
        <p className="cabinet-words">
          The cabinet holds what the clinic keeps: instruments by geometry, alloy and movement, materials by kind and
          strength, never by who made them. Once they are here, a visit takes a whole sequence or a material in a few
          key presses, every file that is marked is counted, and a template lays out the steps of a visit.
        </p>
      )}
      <div className="cabinet-ways">
        <Button weight={isEmpty ? "strong" : "plain"} onClick={addHandFiles}>
          Add the standard's hand files
        </Button>
        <Link href="/methods/instrument" className="button button-bare">
          How diameters and colours come about
        </Link>
      </div>
      {filesOf(view.items).length > 0 && <FilesTable />}
      {instrumentsOf(view.items).length > 0 && (
        <section className="form-part">
          <h3>All instruments, drawn to scale</h3>
          {listedInstruments(view.items).map((moved) => (
            <Drawn key={moved.movement} moved={moved} />
          ))}
        </section>
      )}
    </article>
  );
}

/** Instruments that are moved alike at one scale; many of them wait until they are asked for. */
function Drawn({ moved: { movement, instruments } }: { readonly moved: MovedAlike }) {
  const { view } = useCabinetNow();
  const figure = useMemo(() => {
    const drawn = instruments.flatMap((item) => drawnInstrument(item, view.shown) ?? []);
    return drawn.length === 0 ? undefined : instrumentToScale({ instruments: drawn, theme: "paper", widthPx: 640 });
  }, [instruments, view.shown]);
  return (
    <details className="cabinet-drawn" open={instruments.length <= manyInstruments}>
      <summary>
        {capital(movementWords[movement])}, {instruments.length}
      </summary>
      {figure ? <FigureView figure={figure} /> : <p className="quiet">none of them can be drawn</p>}
    </details>
  );
}

const manyInstruments = 8;
