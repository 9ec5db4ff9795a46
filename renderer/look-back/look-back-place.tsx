export function LookBackPlace() {
  return (
    <main className="place" id="place">
      <h1>Look back</h1>
    </main>
  );
}
