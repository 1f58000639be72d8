import { expect, it } from "vitest";
import { emergencyNames } from "../../src/record/clinic-rules.ts";
import { emergencyGuide } from "../../src/record/emergency/emergency-guide.ts";
import { type BodyOf, partsOf } from "../../src/record/parts.ts";
import type { CaseView } from "../../src/server/api.ts";
import { newBodies } from "../../src/web/rooms/case/new-bodies.ts";
import { benchInBrowser } from "./bench-in-browser.ts";
import { faultsAtBothSizes } from "./faults-at-both-sizes.ts";
import { failingShot } from "./shots.ts";

const about: BodyOf<"case"> = {
  ...{ pseudonym: "P-27", tooth: "27", birthYear: 1970, sex: "female", presentedOn: "2026-01-12" },
  ...{ treatment: "firstTreatment", complaint: "", referredFor: "", background: "", demo: false },
};
const emergency = {
  calls: [
    { who: "Ambulance", number: "0-112" },
    { who: "Supervisor on call", number: "0-4711" },
  ],
  kit: "Red box in room 2; oxygen beside it",
  protocols: { allergy: "Ring the bell in the passage.\nThe second person fetches the red box." },
};

it("the emergency page is one press away, loses nothing, and needs no server", async () => {
  const bench = await benchInBrowser({ who: "A. Resident" });
  const { page, server } = bench;
  failingShot(page, "emergency");
  const sheet = page.getByRole("dialog", { name: "Emergency" });
  const told = (says: string) => sheet.getByText(says).first();

  // Nobody has written a number: it says so, large, and leads to where it is written.
  await page.getByRole("link", { name: "Emergency" }).click();
  await told("Your local emergency number").waitFor();
  await faultsAtBothSizes(page, "emergency-choice");
  await sheet.getByRole("button", { name: "Write them in the settings" }).click();
  await page.getByRole("heading", { name: "Settings" }).first().waitFor();
  expect(await sheet.count()).toBe(0);
  const settings = await (await page.request.get("/api/settings")).json();
  expect((await page.request.put("/api/settings", { data: { ...settings, emergency } })).status()).toBe(200);

  // In the middle of a word of a new visit.
  const answer = await page.request.post("/api/cases", { data: { case: about } });
  const { caseId }: CaseView = await answer.json();
  const put = { op: "put", id: "visit-1", kind: "visit", baseRevision: 0 } as const;
  const operations = [{ ...put, body: newBodies.visit("2026-03-12", {}) }];
  await page.request.post(`/api/cases/${caseId}/gestures`, { data: { words: "Visit recorded", operations } });
  await page.goto(`/case/${caseId}/visit-1`);
  const field = page.getByRole("textbox", { name: "Told to the patient" });
  await field.fill("It may swe");
  const before = page.url();
  await page.keyboard.press("F8");
  await told("0-112").waitFor();
  for (const [index, name] of emergencyNames.entries()) {
    await page.keyboard.press(String(index + 1));
    const { title, steps, call } = emergencyGuide(name);
    await sheet.getByRole("heading", { name: title }).waitFor();
    for (const says of [call.says, steps[0]?.says ?? "", steps.at(-1)?.says ?? ""]) await told(says).waitFor();
    await faultsAtBothSizes(page, `emergency-${name}`);
  }
  const text = (await sheet.textContent()) ?? "";
  expect(text.indexOf("Ring the bell")).toBeGreaterThan(0);
  expect(text.indexOf("Ring the bell")).toBeLessThan(text.indexOf("The usual first steps"));

  // On paper: one page of A4 an emergency, the clinic's numbers on each.
  const pages = async () => (await page.pdf({ format: "A4" })).toString("latin1").match(/\/Type ?\/Page\b/g)?.length;
  expect(await pages()).toBe(1);
  await page.keyboard.press("Escape");
  await expect.poll(() => field.evaluate((element) => element === document.activeElement)).toBe(true);
  expect(page.url()).toBe(before);
  expect(await field.inputValue()).toBe("It may swe");
  await page.keyboard.type("ll; call us.");
  await field.blur();
  const said = async () => partsOf((await bench.caseNow(caseId)).parts, "visit")[0]?.body.told;
  await expect.poll(said).toBe("It may swell; call us.");

  // Above an open dialog, which stays; the key itself goes back.
  await page.keyboard.press("?");
  const keys = page.getByRole("dialog", { name: "Keys" });
  await keys.getByText("Emergency, and back from it").waitFor();
  await page.keyboard.press("F8");
  await told("0-112").waitFor();
  expect(await pages()).toBe(emergencyNames.length);
  await page.keyboard.press("F8");
  await expect.poll(() => sheet.count()).toBe(0);
  expect(await keys.isVisible()).toBe(true);
  await page.keyboard.press("Escape");

  // From the dark room, and with a server that is gone.
  await page.goto(`/case/${caseId}/light-box`);
  await page.getByRole("link", { name: "Emergency" }).waitFor();
  bench.expectComplaint(/./);
  await server.stop();
  await page.getByRole("link", { name: "Emergency" }).click();
  await page.keyboard.press("4");
  await told("Ring the bell").waitFor();
  await told("0-112").waitFor();
  await page.goBack();
  await expect.poll(() => sheet.count()).toBe(0);
  expect(new URL(page.url()).hash).toBe("");
  await bench.context.close();
});
