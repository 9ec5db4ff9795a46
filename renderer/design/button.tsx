import type { ComponentProps } from 'react';

interface ButtonProps extends ComponentProps<'button'> {
  readonly weight?: 'plain' | 'main' | 'act' | 'quiet';
  readonly size?: 'usual' | 'large';
}

export function Button({ weight = 'plain', size = 'usual', className, ...rest }: ButtonProps) {
  return (
    <button
      type="button"
      className={className ? `button ${className}` : 'button'}
      data-weight={weight}
      data-size={size}
      {...rest}
    />
  );
}
