/** Not written yet. */
export const AboutRoom = () => <main></main>;
