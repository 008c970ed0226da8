// A runner that is stopped leaves its workers to run on, so each ends when it loses its runner.
// A signal, because the worker's own `process.exit` is not allowed to end it.
process.once('disconnect', () => {
  process.kill(process.pid, 'SIGKILL');
});
