import { useMemo } from "react";
import { Link } from "wouter";
import { instrumentToScale } from "../../../figures/instrument-to-scale.ts";
import type { CabinetItemOf } from "../../../record/cabinet/cabinet-item.ts";
import { filesOf } from "../../../record/cabinet/items-of-cabinet.ts";
import { Cautions } from "../../parts/cautions.tsx";
import { FigureView } from "../../parts/figure-view.tsx";
import { refusalInWords } from "../../words/value-words.ts";
import { useCabinetNow } from "./cabinet-now.ts";
import { DiametersTable } from "./diameters-table.tsx";
import { drawnInstrument } from "./drawn-instrument.ts";
import { InstrumentForm } from "./instrument-form.tsx";
import { nameOfItem } from "./item-names.ts";
import { measuresOf } from "./measures-of.ts";

/** An instrument of the clinic: drawn to scale, what it measures, and what it is. */
export function InstrumentPage({ item }: { readonly item: CabinetItemOf<"instrument"> }) {
  const { view } = useCabinetNow();
  return (
    <>
      <Measured item={item} />
      <InstrumentForm />
      <FilesOfIt id={item.id} files={filesOf(view.items)} />
    </>
  );
}

function Measured({ item }: { readonly item: CabinetItemOf<"instrument"> }) {
  const { view } = useCabinetNow();
  const told = view.shown[item.id];
  const figure = useMemo(() => {
    const drawn = drawnInstrument(item, view.shown);
    return drawn && instrumentToScale({ instruments: [drawn], theme: "paper", widthPx: 640 });
  }, [item, view.shown]);
  if (told === undefined) return <p className="quiet">What it measures is worked out once it is recorded.</p>;
  const measures = measuresOf(told);
  if (measures === undefined)
    return (
      <div className="cabinet-refused" role="status">
        {("refused" in told ? told.refused : []).map((why) => (
          <p key={why}>{refusalInWords(why)}</p>
        ))}
      </div>
    );
  return (
    <section className="cabinet-measured" aria-label="What it measures">
      {figure && <FigureView figure={figure} />}
      <DiametersTable output={measures} />
      <Cautions topic="instrument" cautions={measures.cautions} />
    </section>
  );
}

function FilesOfIt({ id, files }: { readonly id: string; readonly files: readonly CabinetItemOf<"file">[] }) {
  const own = files.filter(({ body }) => body.instrument === id);
  if (own.length === 0) return null;
  return (
    <section className="form-part">
      <h3>Counted files of it</h3>
      <ul className="cabinet-names">
        {own.map((file) => (
          <li key={file.id}>
            <Link href={`/instruments/${file.id}`}>{nameOfItem(file)}</Link>
          </li>
        ))}
      </ul>
    </section>
  );
}
