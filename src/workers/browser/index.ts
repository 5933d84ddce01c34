export { closeWorker, runAlone, runTask, type TaskWorker, taskWorker } from './run-task';
export { WorkerFailed } from './worker-failed';
