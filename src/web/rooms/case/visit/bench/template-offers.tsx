import { Link } from "wouter";
import { withTemplate } from "../../../../../record/chairside/visit-steps.ts";
import { KeyHint } from "../../../../parts/key-hint.tsx";
import { useShortcut } from "../../../../parts/shortcuts.ts";
import { useCabinet } from "../../../../record/cabinet.ts";
import { useBench } from "./use-bench.ts";

/** What the clinic wants of each kind of visit: one press takes its aim and its steps, and notes nothing as done. */
export function TemplateOffers() {
  const { visit, record } = useBench("Template taken");
  const items = useCabinet().view?.items;
  if (items === undefined) return null;
  const templates = items.flatMap((item) => (item.kind === "template" ? [item] : []));
  if (templates.length === 0)
    return (
      <p className="quiet bench-line">
        The clinic keeps no template of a visit. <Link href="/instruments">Write one in the cabinet</Link>
      </p>
    );
  return (
    <section className="form-part bench-templates" aria-labelledby="visit-templates">
      <h2 id="visit-templates">Begin with the clinic&apos;s steps</h2>
      <div>
        {templates.map((item, index) => (
          <TemplateOffer
            key={item.id}
            name={item.body.name}
            steps={item.body.steps.length}
            digit={index < 9 ? String(index + 1) : undefined}
            take={() => record(withTemplate(visit, item), item.body.name)}
          />
        ))}
      </div>
    </section>
  );
}

interface TemplateOfferOptions {
  readonly name: string;
  readonly steps: number;
  readonly digit: string | undefined;
  readonly take: () => void;
}

function TemplateOffer({ name, steps, digit, take }: TemplateOfferOptions) {
  useShortcut(digit ?? `template ${name}`, "Visit", `Steps of ${name}`, take);
  return (
    <button type="button" className="bench-tile" aria-keyshortcuts={digit} onClick={take}>
      <span>
        {name} <span className="quiet">{steps === 1 ? "1 step" : `${steps} steps`}</span>
      </span>
      {digit !== undefined && <KeyHint keys={digit} />}
    </button>
  );
}
