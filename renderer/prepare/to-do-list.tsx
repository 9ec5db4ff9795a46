import { Button } from '../design/index.ts';
import { focusOn } from './focus-on.ts';
import type { ToDo } from './still-to-do.ts';

interface ToDoListProps {
  readonly name: string;
  readonly toDo: readonly ToDo[];
}

/** Each leads to the entry where it is done. */
export function ToDoList({ name, toDo }: ToDoListProps) {
  return (
    <ul className="missing" aria-label={name}>
      {toDo.map(({ words, field }) => (
        <li key={field}>
          <Button weight="quiet" onClick={() => focusOn(field)}>
            {words}
          </Button>
        </li>
      ))}
    </ul>
  );
}
