// A runner that is stopped leaves its workers to run on, so each ends when it loses its runner.
// A signal, because the worker's own `process.exit` is not allowed to end it.
function endWithRunner(): void {
  process.kill(process.pid, 'SIGKILL');
}

// This is read before each file of tests, and the worker lives through many.
const isHeard = process.listeners('disconnect').some(({ name }) => name === endWithRunner.name);
if (!isHeard) process.once('disconnect', endWithRunner);
