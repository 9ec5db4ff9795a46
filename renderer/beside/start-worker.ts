/** A worker that answers; null in a window that may start none. `make` holds its address, which the builder looks for. */
export function startWorker<Answer>(
  make: () => Worker,
  onAnswer: (answer: Answer) => void,
  onFailure: () => void,
): Worker | null {
  try {
    const worker = make();
    worker.onmessage = ({ data }: MessageEvent<Answer>) => onAnswer(data);
    worker.onerror = onFailure;
    return worker;
  } catch {
    return null;
  }
}
