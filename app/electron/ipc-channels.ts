/** The two channels between the window and the services; names and bodies are those of the contract. */
export const requestChannel = 'still-head:request';
export const eventChannel = 'still-head:event';
