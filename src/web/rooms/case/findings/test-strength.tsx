import { PriorPart } from "./prior-part.tsx";

/** How strongly the tests of this sheet speak: from the share before them to the share after them. */
export const TestStrength = () => (
  <section className="form-part">
    <h2>Strength of the tests</h2>
    <p className="quiet">
      How likely a non-vital pulp is after these tests depends on how likely it was before them: choose that share.
    </p>
    <PriorPart />
  </section>
);
