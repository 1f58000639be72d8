import { renderToStaticMarkup } from "react-dom/server";
import { expect, it } from "vitest";
import { StepTime } from "./step-time.tsx";

const at = new Date(2026, 0, 2, 14, 2).toISOString();
const drawn = (moment: string, readOnly: boolean): string =>
  renderToStaticMarkup(<StepTime at={moment} of="Take a film" readOnly={readOnly} write={() => undefined} />);

it("offers the time of a step to be corrected, named by its step, with the day where that is another", () => {
  const html = drawn(at, false);
  expect(html).toContain("noted 2 Jan 2026, <input");
  for (const said of ['value="14:02"', 'aria-label="Time of: Take a film"', 'aria-invalid="false"'])
    expect(html).toContain(said);
  expect(html).not.toContain("◆");
  expect(drawn(new Date().toISOString(), false)).toContain(">noted <input");
});

it("only tells the time where the case is looked at", () => {
  expect(drawn(at, true)).toBe('<span class="mishap-step-at">noted 2 Jan 2026, 14:02</span>');
});
