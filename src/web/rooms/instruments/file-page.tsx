import { type ReactNode, useEffect, useRef, useState } from "react";
import { Link } from "wouter";
import type { CabinetItemOf } from "../../../record/cabinet/cabinet-item.ts";
import { Button } from "../../parts/button.tsx";
import { today } from "../../parts/days-in-words.ts";
import { SelectField } from "../../parts/fields/choice-field.tsx";
import { DayField } from "../../parts/fields/day-field.tsx";
import { useField } from "../../parts/fields/editing.tsx";
import { TextField } from "../../parts/fields/text-field.tsx";
import { useShortcut } from "../../parts/shortcuts.ts";
import { useCabinetNow } from "./cabinet-now.ts";
import { FileFlag } from "./file-flag.tsx";
import { instrumentChoices } from "./item-names.ts";
import { SterilisedDays } from "./sterilised-days.tsx";
import { TallyTable } from "./tally-table.tsx";

/** One physical file: what it has behind it, whether it is to be discarded, and what was done with it. */
export function FilePage({ item }: { readonly item: CabinetItemOf<"file"> }) {
  const { view } = useCabinetNow();
  const { discarded } = item.body;
  return (
    <>
      <FileFlag file={item} view={view} />
      <TallyTable tally={view.files[item.id]} />
      {discarded === undefined ? <InUse item={item} /> : <Discarded />}
      <section className="form-part">
        <h3>This file</h3>
        <div className="fields">
          <TextField at="label" label="Marked as" />
          <SelectField at="instrument" label="Instrument" words={instrumentChoices(view.items)} />
          <DayField at="since" label="In use since" />
        </div>
        <p className="quiet">
          <Link href={`/instruments/${item.body.instrument}`}>Its instrument, with your limits</Link>
        </p>
        <SterilisedDays />
      </section>
    </>
  );
}

/** What is done with a file that is in use: sterilised in one press, discarded with a reason. */
function InUse({ item }: { readonly item: CabinetItemOf<"file"> }) {
  const { sterilised } = useCabinetNow();
  const [asked, ask] = useState(false);
  useShortcut("e", "Cabinet", "This file was sterilised today", () => sterilised(item.id));
  return (
    <Ways>
      <Button hint="e" onClick={() => sterilised(item.id)}>
        Sterilised today
      </Button>
      {asked ? <Discard leave={() => ask(false)} /> : <Button onClick={() => ask(true)}>Discard it</Button>}
    </Ways>
  );
}

const Ways = ({ children }: { readonly children: ReactNode }) => <div className="cabinet-ways">{children}</div>;

function Discard({ leave }: { readonly leave: () => void }) {
  const field = useField("discarded", "Discarded");
  const [because, write] = useState("");
  const input = useRef<HTMLInputElement>(null);
  useEffect(() => input.current?.focus(), []);
  const done = because.trim() !== "";
  return (
    <form
      className="cabinet-ways"
      onSubmit={(event) => {
        event.preventDefault();
        if (done) field.write({ on: today(), because: because.trim() }, because.trim(), "now");
      }}
    >
      <label className="cabinet-because">
        <span className="field-label">Why it is discarded</span>
        <input
          className="field-line"
          value={because}
          maxLength={300}
          onChange={({ target }) => write(target.value)}
          ref={input}
        />
      </label>
      <Button type="submit" weight="look" disabled={!done}>
        Discard it today
      </Button>
      <Button weight="bare" onClick={leave}>
        Keep it in use
      </Button>
    </form>
  );
}

function Discarded() {
  const field = useField("discarded", "Discarded");
  return (
    <Ways>
      <Button onClick={() => field.write(undefined, "back in use", "now")}>Bring it back into use</Button>
    </Ways>
  );
}
