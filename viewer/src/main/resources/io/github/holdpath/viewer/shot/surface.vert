uniform mat4 g_WorldViewProjectionMatrix;
uniform mat4 g_WorldMatrix;
in vec3 inPosition;
in vec4 inColor;
out vec4 colour;
#ifdef LIT
in vec3 inNormal;
// Towards the light, Y up; what turns away from it keeps this part of its colour.
const vec3 light = vec3(0.4506, 0.8211, 0.3505);
const float dark = 0.62;
#endif

void main() {
    colour = inColor;
#ifdef LIT
    vec3 normal = normalize(mat3(g_WorldMatrix) * inNormal);
    colour.rgb *= dark + (1.0 - dark) * max(0.0, dot(normal, light));
#endif
    gl_Position = g_WorldViewProjectionMatrix * vec4(inPosition, 1.0);
}
