import { priorOffers } from "../../../../record/prior-offers.ts";
import { Button } from "../../../parts/button.tsx";
import { useField } from "../../../parts/fields/editing.tsx";
import { NumberField } from "../../../parts/fields/number-field.tsx";
import { Optional } from "../../../parts/fields/rows.tsx";
import { SliderField } from "../../../parts/fields/slider-field.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";

/** How often a tooth like this one is diseased before any test: asked, never taken by itself. */
export const PriorPart = () => (
  <>
    <Offers />
    <div className="fields">
      <Optional at="prior" label="prior" add="Write a share of your own" start={() => ({ from: "" })}>
        <NumberField at="share" label="Share, 0 to 1" />
        <NumberField at="events" label="or diseased teeth" />
        <NumberField at="n" label="among so many" />
        <SliderField
          at="dependence"
          label="How far tests repeat each other"
          least={0}
          most={1}
          step={0.05}
          unset={{ value: 0, says: "taken as independent" }}
          inWords={dependenceInWords}
        />
        <TextField at="from" label="Where it comes from" prose />
      </Optional>
    </div>
  </>
);

const dependenceInWords = (value: number): string => `${value} of 1`;

/** Published shares, each taken with one press. */
function Offers() {
  const field = useField("prior", "Prior");
  if (field.readOnly || field.value !== undefined) return null;
  return priorOffers.map(({ says, prior }) => (
    <p key={prior.from}>
      <Button onClick={() => field.write(prior, `${prior.share}, as published`, "now")}>Take {prior.share}</Button>{" "}
      <span className="quiet">
        {says}. {prior.from}
      </span>
    </p>
  ));
}
