import "./seen-mark.css";

/** Behind a published reference: whether it was read or recalled. */
export const SeenMark = ({ verification }: { readonly verification: string }) => (
  <span className="seen-mark" data-seen={verification === "seen"}>
    {verification === "seen" ? "seen" : "from memory"}
  </span>
);
