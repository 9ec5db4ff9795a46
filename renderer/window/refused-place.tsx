/** A window whose address was used up: nothing here can work, so nothing else is offered. */
export function RefusedPlace() {
  return (
    <main className="place" id="place">
      <h1>This address was used before</h1>
      <p className="place-lead">
        It opens one window, once, and that window goes on as it was. For a new one, press Enter in
        the terminal where this program was started. Starting the program again helps as well, but
        ends a run that is being recorded.
      </p>
    </main>
  );
}
