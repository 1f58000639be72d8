import { describe, expect, it } from "vitest";
import { fileItem, instrumentItem } from "../../../../record/cabinet/cabinet-for-tests.ts";
import { fileStillInUse } from "./file-still-in-use.ts";
import type { Mishap } from "./with-kind.ts";

const separated = (id?: string): Pick<Mishap, "separated"> => ({
  separated: {
    ...{ signs: [], tipBound: "notKnown", stoppedAtTorqueLimit: "notKnown", headSeen: "notLooked" },
    ...{ stage: "notRecorded", ...(id === undefined ? {} : { file: { id, label: id } }) },
  },
});
const items = [instrumentItem("shaper"), fileItem("f-1", "shaper"), fileItem("f-2", "shaper", true)];

describe("the counted file of a broken instrument", () => {
  it("is told while the cabinet holds it in use", () => {
    expect(fileStillInUse(separated("f-1"), items)?.id).toBe("f-1");
  });

  it("is not once it is discarded, gone, or was never counted", () => {
    for (const id of ["f-2", "f-3", "shaper", undefined]) expect(fileStillInUse(separated(id), items)).toBeUndefined();
    expect(fileStillInUse({}, items)).toBeUndefined();
  });
});
