/** Texts that are built into the window as they are. */
declare module '*?raw' {
  const text: string;
  export default text;
}
