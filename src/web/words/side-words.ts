/** To which side a bend turns, as two films tell it. */
export const bendSideWords: Readonly<Record<string, string>> = {
  buccal: "to buccal",
  lingual: "to lingual",
  mixed: "to both sides, one bend after the other",
  undetermined: "not told by these films",
};

/** Where a canal lies beside the mark that both films share. */
export const liesSideWords: Readonly<Record<string, string>> = {
  buccal: "to buccal",
  lingual: "to lingual",
  undetermined: "not told by these films",
};
