import { useState } from 'react';
import { say } from '#shared-core';
import { Button } from '../design/index.ts';
import { LessonScriptDialog } from './lesson-script-dialog.tsx';

/** The way to the script before the lesson. */
export function LessonScriptButton() {
  const [isOpen, setOpen] = useState(false);
  return (
    <>
      <Button onClick={() => setOpen(true)}>{say('Lesson script …')}</Button>
      {isOpen && <LessonScriptDialog onClose={() => setOpen(false)} />}
    </>
  );
}
