/** Not written yet. */
export const SettingsRoom = () => <main></main>;
