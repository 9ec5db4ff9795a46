import { useEffect, useState } from 'react';
import { say } from '#shared-core';

/** Whose work is in this program. A long text, so it is fetched when somebody asks for it. */
export function Notices() {
  const [text, setText] = useState('');
  useEffect(() => {
    let isWanted = true;
    void import('./third-party-notices.txt?raw').then(({ default: notices }) => {
      if (isWanted) setText(notices);
    });
    return () => {
      isWanted = false;
    };
  }, []);
  return (
    <>
      <p>
        {say(
          'This program is under the MIT licence. It holds the work of others, with their licences:',
        )}
      </p>
      <pre className="help-notices">{text}</pre>
    </>
  );
}
