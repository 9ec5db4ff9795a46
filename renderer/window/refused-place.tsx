/** A window whose address was used up: nothing here can work, so nothing else is offered. */
export function RefusedPlace() {
  return (
    <main className="place" id="place">
      <h1>This address was used before</h1>
      <p className="place-lead">
        It opens one window, once, and that window goes on as it was. For a new one, start the
        program again, or open the page <code>open-window.html</code> in the folder of runs. A run
        that is being recorded goes on.
      </p>
    </main>
  );
}
