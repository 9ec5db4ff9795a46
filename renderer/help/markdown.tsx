import { lexer, type Token, type Tokens } from 'marked';
import { Fragment, type ReactNode } from 'react';

interface MarkdownProps {
  readonly text: string;
  /** Follows a link such as `[…](#ports)`; other addresses stay words, since the help needs no network. */
  readonly onTopic: (name: string) => void;
}

/** A page of the help as elements of React: what is no known kind of text is shown as it was written. */
export function Markdown({ text, onTopic }: MarkdownProps) {
  return <>{blocks(lexer(text), onTopic)}</>;
}

type OnTopic = MarkdownProps['onTopic'];

function blocks(tokens: readonly Token[], onTopic: OnTopic): ReactNode {
  // biome-ignore lint/suspicious/noArrayIndexKey: a page never changes its order.
  return tokens.map((token, index) => <Fragment key={index}>{piece(token, onTopic)}</Fragment>);
}

function piece(token: Token, onTopic: OnTopic): ReactNode {
  switch (token.type) {
    case 'space':
      return null;
    case 'heading':
      return <h4>{within(token, onTopic)}</h4>;
    case 'paragraph':
      return <p>{within(token, onTopic)}</p>;
    case 'list':
      return list(token as Tokens.List, onTopic);
    case 'table':
      return table(token as Tokens.Table, onTopic);
    case 'code':
      return (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a command may be wider than a phone, and is then scrolled by keys.
        <pre tabIndex={0}>
          <code>{(token as Tokens.Code).text}</code>
        </pre>
      );
    case 'strong':
      return <strong>{within(token, onTopic)}</strong>;
    case 'em':
      return <em>{within(token, onTopic)}</em>;
    case 'codespan':
      return <code>{(token as Tokens.Codespan).text}</code>;
    case 'link':
      return link(token as Tokens.Link, onTopic);
    case 'text':
      return within(token, onTopic);
    default:
      return token.raw;
  }
}

function within(token: Token, onTopic: OnTopic): ReactNode {
  if ('tokens' in token && token.tokens !== undefined) return blocks(token.tokens, onTopic);
  return 'text' in token ? String(token.text) : token.raw;
}

function list({ ordered, items }: Tokens.List, onTopic: OnTopic): ReactNode {
  const entries = items.map(({ raw, tokens }) => (
    <li key={raw}>
      {tokens.map((token) =>
        token.type === 'text' ? (
          <p key={token.raw}>{within(token, onTopic)}</p>
        ) : (
          <Fragment key={token.raw}>{piece(token, onTopic)}</Fragment>
        ),
      )}
    </li>
  ));
  return ordered ? <ol>{entries}</ol> : <ul>{entries}</ul>;
}

function table({ header, rows }: Tokens.Table, onTopic: OnTopic): ReactNode {
  return (
    <table>
      <thead>
        <tr>
          {header.map((cell) => (
            <th key={cell.text} scope="col">
              {blocks(cell.tokens, onTopic)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(([first, ...others]) => (
          <tr key={first?.text}>
            <th scope="row">{blocks(first?.tokens ?? [], onTopic)}</th>
            {others.map((cell, index) => (
              <td key={header[index + 1]?.text}>{blocks(cell.tokens, onTopic)}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function link(token: Tokens.Link, onTopic: OnTopic): ReactNode {
  const words = within(token, onTopic);
  if (!token.href.startsWith('#')) return words;
  return (
    <button type="button" className="help-link" onClick={() => onTopic(token.href.slice(1))}>
      {words}
    </button>
  );
}
