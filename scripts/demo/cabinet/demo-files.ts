import type { CabinetItemOf } from "../../../src/record/cabinet/cabinet-item.ts";
import { days } from "../cases/case-a/days.ts";

/** The counted files of the demo; the second parted in case A, the third is over two limits. */
export const demoFiles: readonly { readonly id: string; readonly body: CabinetItemOf<"file">["body"] }[] = [
  {
    id: "demo-file-yellow-04-a",
    body: {
      instrument: "demo-20-04",
      label: "20/.04 A",
      since: "2025-09-15",
      sterilisedOn: ["2025-09-15", "2025-09-19"],
    },
  },
  {
    id: "demo-file-red-06-b",
    body: {
      ...{ instrument: "demo-25-06", label: "25/.06 B", since: "2024-02-26", sterilisedOn: ["2024-02-27"] },
      discarded: { on: days.firstVisit, because: "Parted in a canal; the shaft is kept for the microscope" },
    },
  },
  {
    id: "demo-file-red-04-a",
    body: {
      ...{ instrument: "demo-25-04", label: "25/.04 A", since: "2025-08-20" },
      sterilisedOn: ["2025-08-20", "2025-08-22", "2025-08-25", "2025-09-19"],
    },
  },
  {
    id: "demo-file-variable-a",
    body: { instrument: "demo-25-variable", label: "25/v A", since: "2025-11-10", sterilisedOn: ["2025-11-10"] },
  },
];
