export { BooksOfRun } from './books-of-run.tsx';
