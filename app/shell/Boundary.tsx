import { Component, type ErrorInfo, type ReactNode } from 'react';
import { Trouble } from './Trouble';

interface Failure {
  readonly error: unknown;
  /** The components that it came through. */
  readonly stack: string;
}

interface Props {
  /** What cannot be shown then. */
  readonly what: 'room' | 'window' | 'app';
  /** Closes it, where it can be closed. */
  readonly close?: () => void;
  readonly children: ReactNode;
}

/** Holds a failure of what is in it, so that the rest goes on: it says so, and offers what can be done. */
export class Boundary extends Component<Props, { readonly failure: Failure | null }> {
  override state: { readonly failure: Failure | null } = { failure: null };

  static getDerivedStateFromError(error: unknown): { failure: Failure } {
    return { failure: { error, stack: '' } };
  }

  override componentDidCatch(error: unknown, { componentStack }: ErrorInfo): void {
    this.setState({ failure: { error, stack: componentStack ?? '' } });
  }

  override render(): ReactNode {
    const { failure } = this.state;
    const { what, close, children } = this.props;
    if (!failure) return children;
    return (
      <Trouble
        what={what}
        {...failure}
        again={() => this.setState({ failure: null })}
        {...(close ? { close } : {})}
      />
    );
  }
}
