// Takes all of one processor, as a virus scanner does.
for (;;);
