import { useId, useRef } from "react";
import type { Supposed } from "../../../../../ledger/visit-supposed.ts";
import { Button } from "../../../../parts/button.tsx";
import { KeyHint } from "../../../../parts/key-hint.tsx";
import { useShortcut } from "../../../../parts/shortcuts.ts";
import { FigureField } from "./figure-field.tsx";
import { placeOf, type SupposedScale, supposedScales, valueAtPlace } from "./supposed-scales.ts";

interface WhatIfFieldsOptions {
  /** What is recorded; where it is absent, what the sum takes. */
  readonly recorded: Supposed;
  readonly supposed: Supposed;
  readonly suppose: (supposed: Supposed) => void;
  /** Where the rate of evaporation comes from. */
  readonly rate: string;
}

/** Sliders and figures that begin at what is recorded; nothing that is set here is recorded. */
export function WhatIfFields({ recorded, supposed, suppose, rate }: WhatIfFieldsOptions) {
  const isOther = Object.keys(supposed).length > 0;
  const putBack = () => suppose({});
  const fields = useRef<HTMLFieldSetElement>(null);
  useShortcut("v", "Solvent", "Go to the what-if of the solvent", () =>
    fields.current?.querySelector<HTMLInputElement>("input[type=range]")?.focus(),
  );
  useShortcut("y", "Solvent", "Put the what-if back to what is recorded", putBack);
  return (
    <fieldset className="air-what-if" ref={fields}>
      <legend className="field-label">
        What if. Nothing that you set here is recorded. <KeyHint keys="v" />
      </legend>
      {supposedScales(recorded).map((scale) => (
        <OneScale
          key={scale.name}
          {...{ scale }}
          from={scale.name === "ratePerMin" ? rate : "as recorded"}
          recorded={recorded[scale.name]}
          supposed={supposed[scale.name]}
          suppose={(value) => suppose(withSupposed(supposed, scale.name, value, recorded[scale.name]))}
        />
      ))}
      <div>
        <Button hint="y" disabled={!isOther} onClick={putBack}>
          Put back
        </Button>
      </div>
    </fieldset>
  );
}

/** What is set to what is recorded is supposed no longer. */
function withSupposed(
  all: Supposed,
  name: keyof Supposed,
  value: number | undefined,
  recorded: number | undefined,
): Supposed {
  const others = Object.fromEntries(Object.entries(all).filter(([one]) => one !== name));
  return value === undefined || value === recorded ? others : { ...others, [name]: value };
}

interface OneScaleOptions {
  readonly scale: SupposedScale;
  readonly recorded: number | undefined;
  readonly supposed: number | undefined;
  readonly suppose: (value: number | undefined) => void;
  /** Where what stands there unchanged comes from. */
  readonly from: string;
}

function OneScale({ scale, recorded, supposed, suppose, from }: OneScaleOptions) {
  const id = useId();
  const value = supposed ?? recorded;
  const { label, unit, least, most, step } = scale;
  return (
    <div className="air-scale" data-supposed={supposed !== undefined}>
      <FigureField {...{ label, unit, value }} change={suppose} placeholder="differs" />
      <div className="air-scale-line">
        <label className="unseen" htmlFor={id}>
          {label}, on a scale
        </label>
        <input
          id={id}
          type="range"
          {...{ min: least, max: most, step }}
          value={placeOf(scale, value ?? least)}
          aria-valuetext={value === undefined ? "differs" : `${value} ${unit}`}
          onChange={({ target }) => suppose(valueAtPlace(scale, target.valueAsNumber))}
        />
        <span className="quiet">
          {supposed === undefined ? from : `◇ ${recorded ?? "differs from dose to dose"}: ${from}`}
        </span>
      </div>
    </div>
  );
}
