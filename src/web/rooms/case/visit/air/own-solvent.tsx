import { useId, useState } from "react";
import { faultsOf } from "../../../../../core/faults-of.ts";
import { ownSolvent } from "../../../../../record/parts/visit-materials.ts";
import { Button } from "../../../../parts/button.tsx";
import { useField } from "../../../../parts/fields/editing.tsx";
import { Labelled } from "../../../../parts/fields/labelled.tsx";
import { FigureField } from "./figure-field.tsx";

interface OwnSolventOptions {
  /** Rows of the visit's doses that have no numbers. */
  readonly rows: readonly number[];
}

const asked = [
  { name: "molarMassGMol", label: "Molar mass", unit: "g/mol" },
  { name: "densityGMl", label: "Density", unit: "g/ml" },
  { name: "vapourPressureKPa", label: "Vapour pressure at the room's temperature", unit: "kPa" },
] as const;

/** Asks for the numbers of a solvent that none are published for here; they are kept with each of its doses once they are whole. */
export function OwnSolvent({ rows }: OwnSolventOptions) {
  const id = useId();
  const doses = useField("solvent", "Solvent");
  const [draft, setDraft] = useState<Readonly<Record<string, string | number | undefined>>>({ name: "" });
  const [tried, setTried] = useState(false);
  const read = ownSolvent.safeParse(draft);
  const faults = tried && read.error !== undefined ? faultsOf(read.error, draft) : [];
  const faultAt = (name: string) => faults.find(({ path }) => path === name)?.says;
  const all: readonly unknown[] = Array.isArray(doses.value) ? doses.value : [];
  const keep = () => {
    setTried(true);
    if (read.data === undefined) return;
    const own = read.data;
    const next = all.map((dose, row) => (rows.includes(row) && typeof dose === "object" ? { ...dose, own } : dose));
    doses.write(next, `numbers of ${own.name} noted`, "now");
  };
  if (doses.readOnly) return <p className="quiet">A solvent without numbers: nothing is reckoned for it.</p>;
  return (
    <section className="form-part" aria-label="Numbers of a solvent">
      <p className="look">◆ A solvent was used that no numbers are known for. They stand in its safety data sheet.</p>
      <div className="fields">
        <Labelled field={{ id, fault: faultAt("name") }} label="What it is">
          <input
            id={id}
            className="field-line"
            value={draft.name ?? ""}
            onChange={({ target }) => setDraft({ ...draft, name: target.value })}
          />
        </Labelled>
        {asked.map(({ name, label, unit }) => {
          const value = draft[name];
          return (
            <FigureField
              key={name}
              {...{ label, unit }}
              value={typeof value === "number" ? value : undefined}
              fault={faultAt(name)}
              change={(next) => setDraft({ ...draft, [name]: next })}
            />
          );
        })}
      </div>
      <div>
        <Button onClick={keep}>Keep its numbers</Button>
      </div>
    </section>
  );
}
