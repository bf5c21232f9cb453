/**
 * Lets the messages that have already arrived be heard. A message to oneself rather than a timer, since browsers
 * slow nested timers to 4 ms, a quarter of a draft.
 */
export function turn(): Promise<void> {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(undefined);
  });
}
