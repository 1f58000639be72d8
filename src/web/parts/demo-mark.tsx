import "./demo-mark.css";

/** Stands on everything that belongs to the demo. */
export const DemoMark = () => <span className="demo-mark">Demo: invented</span>;
