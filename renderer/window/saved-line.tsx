import { say } from '#shared-core';
import { useBench } from '../parts/index.ts';
import { isViewer, troublesOf } from '../stores/index.ts';
import { clockWords } from '../words/index.ts';

/** Whether the run is saved on disk, said only after the disk has said so. */
export function SavedLine() {
  const recording = useBench((bench) => bench.recording);
  const connection = useBench((bench) => bench.connection);
  const probe = useBench((bench) => bench.probe);
  const onlyWatches = useBench(isViewer);
  const timeScale = probe?.source?.timeScale ?? 1;
  const isRehearsal = timeScale > 1 || probe?.source?.kind === 'demo';
  if (connection === 'lost') {
    return (
      <p className="saved" data-tone="bad" role="alert">
        {say('Connection lost, trying again …')}
      </p>
    );
  }
  if (connection === 'refused') return <p className="saved" />;
  const isOneNotSaved = recording?.state === 'idle' && recording.notSaved !== undefined;
  if (recording?.state === 'failed' || isOneNotSaved) {
    return (
      <p className="saved" data-tone="bad">
        {say('Not saved')}
      </p>
    );
  }
  const isRecording = recording?.state === 'recording';
  return (
    <p
      className="saved number"
      data-tone={isRecording && troublesOf(recording).length === 0 ? 'good' : 'quiet'}
    >
      {isRecording && recording.savedToS !== null
        ? say('Saved to {savedTo}', { savedTo: clockWords(recording.savedToS) })
        : isRecording
          ? say('Recording …')
          : say('Not recording')}
      {isRecording && isRehearsal && ` · ${say('rehearsal × {timeScale}', { timeScale })}`}
      {onlyWatches && ` · ${say('view only')}`}
    </p>
  );
}
