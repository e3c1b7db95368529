uniform vec4 m_Tint;
in vec4 colour;
out vec4 outFragColor;

void main() {
    outFragColor = colour * m_Tint;
}
