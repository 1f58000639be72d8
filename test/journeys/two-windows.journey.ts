import type { Locator, Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { partsOf, thePart } from "../../src/record/parts.ts";
import { benchInBrowser } from "./bench-in-browser.ts";
import { byPointer } from "./by-pointer.ts";
import { beginCase } from "./first-case-story.ts";
import { recorded } from "./hand.ts";
import { failingShot, shot } from "./shots.ts";

const complaintIn = (page: Page): Locator => page.getByRole("textbox", { name: "Complaint, in the patient's words" });

describe("two windows on one case", () => {
  it("that edit one part show both versions to the second, and keep what it chooses", async () => {
    const bench = await benchInBrowser({ who: "A. Resident" });
    // The second window's gesture is answered with 409, which the browser notes.
    bench.expectComplaint(/409 \(Conflict\)/);
    const { page, context } = bench;
    failingShot(page, "two-windows");
    const caseId = await beginCase(byPointer(page), "11");
    const other = await context.newPage();
    await other.goto(`/case/${caseId}`);
    const [mine, theirs] = [complaintIn(other), complaintIn(page)];
    await mine.waitFor();

    await theirs.fill("It has gone dark.");
    await theirs.blur();
    await recorded(page);
    await mine.fill("It hurts when I bite.");
    await mine.blur();
    const dialog = other.getByRole("dialog", { name: /changed in another window/ });
    await dialog.getByText("It hurts when I bite.").first().waitFor();
    await dialog.getByText("It has gone dark.").first().waitFor();
    await shot(other, "conflict");
    await dialog.getByRole("button", { name: "Keep mine" }).click();
    await recorded(other);
    expect(await complaintNow()).toBe("It hurts when I bite.");

    // What was not kept stands in the history, as a change of its own.
    const before = await (await page.request.get(`/api/cases/${caseId}/at/2`)).json();
    expect(thePart(before.parts, "case")?.body.complaint).toBe("It has gone dark.");

    await theirs.fill("Both, really.");
    await theirs.blur();
    const first = page.getByRole("dialog", { name: /changed in another window/ });
    await first.getByRole("button", { name: "Keep theirs" }).click();
    await first.waitFor({ state: "detached" });
    expect(await complaintNow()).toBe("It hurts when I bite.");
    await bench.close();

    async function complaintNow(): Promise<string | undefined> {
      return thePart((await bench.caseNow(caseId)).parts, "case")?.body.complaint;
    }
  });

  it("that edit different parts disturb each other in nothing", async () => {
    const bench = await benchInBrowser({ who: "A. Resident" });
    const { page, context } = bench;
    failingShot(page, "two-windows-apart");
    const hand = byPointer(page);
    const caseId = await beginCase(hand, "11");
    await hand.addMoment("Diagnosis");
    await recorded(page);
    const other = await context.newPage();
    await other.goto(`/case/${caseId}`);
    await other.getByRole("link", { name: "Presenting" }).click();
    await hand.pick(page.getByRole("radio", { name: "pulp necrosis" }));
    await recorded(page);
    await complaintIn(other).fill("It has gone dark.");
    await complaintIn(other).blur();
    await recorded(other);
    const { parts } = await bench.caseNow(caseId);
    expect(thePart(parts, "case")?.body.complaint).toBe("It has gone dark.");
    expect(partsOf(parts, "diagnosis")[0]?.body.pulpal).toBe("pulpNecrosis");
    await bench.close();
  });
});
